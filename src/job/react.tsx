import { createContext, type ReactNode, useContext } from 'react';
import { useStore } from 'zustand';
import type { DraftState } from './draft-store';
import type { Session, SessionState } from './session';

const SessionContext = createContext<Session | null>(null);

export function SessionProvider({ session, children }: { session: Session; children: ReactNode }) {
  return <SessionContext value={session}>{children}</SessionContext>;
}

export function useSession(): Session {
  const session = useContext(SessionContext);
  if (!session) throw new Error('useSession outside a SessionProvider');
  return session;
}

/** Part of what the person edits, or one of its actions. */
export const useDraft = <T,>(select: (state: DraftState) => T): T => useStore(useSession().draft, select);

/** Part of what follows from the draft. */
export const useSessionState = <T,>(select: (state: SessionState) => T): T => useStore(useSession().state, select);

/** How many steps can be undone and redone. */
export function useHistory(): { past: number; future: number } {
  const { temporal } = useSession().draft;
  return {
    past: useStore(temporal, ({ pastStates }) => pastStates.length),
    future: useStore(temporal, ({ futureStates }) => futureStates.length),
  };
}
