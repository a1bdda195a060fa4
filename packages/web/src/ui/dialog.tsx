import type { ReactNode } from 'react';
import { Dialog as AriaDialog, Heading, Modal, ModalOverlay } from 'react-aria-components';

interface DialogProps {
  readonly title: string;
  readonly isOpen: boolean;
  readonly onClose: () => void;
  readonly children: ReactNode;
  readonly wide?: boolean;
  /** A question that must be answered cannot be dismissed. */
  readonly mustAnswer?: boolean;
}

export function Dialog({ title, isOpen, onClose, children, wide = false, mustAnswer = false }: DialogProps) {
  return (
    <ModalOverlay
      className="backdrop"
      isOpen={isOpen}
      onOpenChange={(open) => {
        if (!open) onClose();
      }}
      isDismissable={!mustAnswer}
      isKeyboardDismissDisabled={mustAnswer}
    >
      <Modal className="modal" {...(wide ? { 'data-wide': '' } : {})}>
        <AriaDialog className="dialog" role={mustAnswer ? 'alertdialog' : 'dialog'}>
          <Heading slot="title" className="dialog-title">
            {title}
          </Heading>
          {children}
        </AriaDialog>
      </Modal>
    </ModalOverlay>
  );
}

export function DialogActions({ children }: { readonly children: ReactNode }) {
  return <div className="dialog-actions">{children}</div>;
}
