import { Component, type ReactNode } from 'react';
import { exportAll } from '../storage/export-notes.ts';
import { repository } from '../storage/repository.ts';
import { Button } from '../ui/button.tsx';

interface Caught {
  readonly error: unknown;
}

/** Stands between a fault of ours and the notes: says so, and offers them as files. */
export class ErrorBoundary extends Component<{ readonly children: ReactNode }, { caught?: Caught }> {
  override state: { caught?: Caught } = {};

  static getDerivedStateFromError(error: unknown): { caught: Caught } {
    return { caught: { error } };
  }

  override render() {
    const { caught } = this.state;
    if (caught === undefined) return this.props.children;
    return (
      <main className="fault paper">
        <h1>Foregone has stumbled.</h1>
        <p>
          This is a fault in the app, not in your notes. They are kept in this browser, and you can take them
          out as files before anything else.
        </p>
        <div className="dialog-actions">
          <Button tone="pencil" onPress={() => void exportAll(repository)}>
            Export all notes
          </Button>
          <Button onPress={() => window.location.reload()}>Open again</Button>
        </div>
        <p className="second">{messageOf(caught.error)}</p>
      </main>
    );
  }
}

function messageOf(error: unknown): string {
  return error instanceof Error ? `${error.name}: ${error.message}` : String(error);
}
