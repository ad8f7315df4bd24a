import { useState } from 'react';
import { useSession } from '../../job';

/**
 * Makes files one at a time: what is being made just now, and a notice where it fails. The job is left as it is.
 * @returns `making`: what is being made, within a sentence; null while nothing is
 */
export function useMaking(): {
  making: string | null;
  make: (what: string, work: () => Promise<void>) => Promise<void>;
} {
  const { tell } = useSession();
  const [making, setMaking] = useState<string | null>(null);
  const make = async (what: string, work: () => Promise<void>) => {
    setMaking(what);
    try {
      await work();
    } catch (error) {
      tell(
        `The ${what} could not be made (${error instanceof Error ? error.message : String(error)}). The job is as it was; try again, with a connection if this is the first time. Where a newer version has come meanwhile, load the page again.`,
      );
    } finally {
      setMaking(null);
    }
  };
  return { making, make };
}
