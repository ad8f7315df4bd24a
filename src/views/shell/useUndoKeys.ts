import { useEffect } from 'react';
import { useSession } from '../../job';

/** Ctrl or ⌘ with Z undoes, with shift and Z or with Y redoes. */
export function useUndoKeys(): void {
  const { draft } = useSession();
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      const key = event.key.toLowerCase();
      const back = key === 'z' && !event.shiftKey;
      if (!back && key !== 'y' && !(key === 'z' && event.shiftKey)) return;
      event.preventDefault();
      if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
      if (back) draft.getState().undo();
      else draft.getState().redo();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [draft]);
}
