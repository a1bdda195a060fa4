import { Button } from '../ui/button.tsx';
import { Icon } from '../ui/icons.tsx';
import { useStore } from '../ui/store.ts';
import { folderState, letFolderGo, reopenFolder, type FolderState } from './folder.ts';

/** How the linked folder stands, at the foot of the shelf; nothing where none is linked. */
export function FolderLine() {
  const state = useStore(folderState);
  if (state.kind === 'none') return null;
  return (
    <aside className="folder-line" aria-label="Linked folder">
      <Icon name="folder" />
      <p className={state.kind === 'trouble' ? 'brick' : 'second'}>{wordsOf(state)}</p>
      {state.kind !== 'in step' && (
        <Button tone="quiet" onPress={() => void reopenFolder()}>
          {state.kind === 'waiting' ? 'Open it' : 'Try again'}
        </Button>
      )}
      <Button tone="quiet" onPress={() => void letFolderGo()}>
        Let go
      </Button>
    </aside>
  );
}

function wordsOf(state: Exclude<FolderState, { kind: 'none' }>): string {
  switch (state.kind) {
    case 'waiting':
      return `The browser wants to be asked before it opens the folder “${state.name}” again.`;
    case 'in step':
      return `In step with the folder “${state.name}”.`;
    case 'trouble':
      return `The folder “${state.name}”: ${state.words}`;
  }
}
