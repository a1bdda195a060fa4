import { Menu, MenuItem, MenuSection, MenuTrigger, Popover, Header } from 'react-aria-components';
import type { NoteRecord } from '../storage/records.ts';
import { Button } from '../ui/button.tsx';
import { Icon } from '../ui/icons.tsx';
import { startNote } from './actions.ts';
import { loadExamples, TEMPLATES } from './texts.ts';

/** A new note: an empty page, a template, or a copy of an example. */
export function NewNoteButton({ onExamples }: { readonly onExamples: () => void }) {
  return (
    <MenuTrigger>
      <Button tone="pencil">
        <Icon name="add" />
        New note
      </Button>
      <Popover className="popover">
        <Menu className="menu" aria-label="New note">
          <MenuSection>
            <Header className="menu-head">Begin with</Header>
            {TEMPLATES.map(({ name, text }) => (
              <MenuItem key={name} className="menu-item" onAction={() => void startNote(text)}>
                {name}
              </MenuItem>
            ))}
          </MenuSection>
          <MenuSection>
            <Header className="menu-head">Or learn from</Header>
            <MenuItem className="menu-item" onAction={onExamples}>
              An example …
            </MenuItem>
          </MenuSection>
        </Menu>
      </Popover>
    </MenuTrigger>
  );
}

export type Example = Pick<NoteRecord, 'title' | 'text'>;

export async function namedExamples(): Promise<readonly Example[]> {
  const { titleOf } = await import('../storage/title.ts');
  const texts = await loadExamples();
  return Promise.all(texts.map(async (text) => ({ title: await titleOf(text), text })));
}
