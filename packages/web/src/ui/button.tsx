import type { ReactNode, Ref } from 'react';
import { Button as AriaButton } from 'react-aria-components';

export type Tone = 'ink' | 'pencil' | 'brick' | 'quiet' | 'icon';

interface ButtonProps {
  readonly children: ReactNode;
  readonly tone?: Tone;
  /** Said instead of the children; needed where they are only a drawing. */
  readonly label?: string;
  readonly isDisabled?: boolean;
  readonly autoFocus?: boolean;
  readonly type?: 'button' | 'submit';
  readonly slot?: string | null;
  readonly onPress?: () => void;
  readonly ref?: Ref<HTMLButtonElement>;
}

export function Button({ children, tone = 'ink', label, onPress, ...rest }: ButtonProps) {
  return (
    <AriaButton
      {...rest}
      className="button"
      data-tone={tone}
      {...(label === undefined ? {} : { 'aria-label': label })}
      {...(onPress === undefined ? {} : { onPress: () => onPress() })}
    >
      {children}
    </AriaButton>
  );
}
