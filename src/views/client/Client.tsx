import { Tabs } from 'radix-ui';
import { useSessionState } from '../../job';
import { PartTabs } from '../parts';
import { type ClientPart, goTo } from '../place';
import { Choices } from './Choices';
import { Look } from './Look';
import { PricePart } from './PricePart';
import { Send } from './Send';

const parts: readonly (readonly [ClientPart, string])[] = [
  ['look', 'How it will look'],
  ['choices', 'Choices'],
  ['price', 'Price and quote'],
  ['send', 'Send'],
];

/** With the homeowner: the finished alcove, its choices, what each costs, and a link to keep. */
export function Client({ part }: { part: ClientPart }) {
  const result = useSessionState((state) => state.result);
  const job = useSessionState((state) => state.solved);
  if (!result || !job) return <p>Working out how it will look…</p>;
  return (
    <PartTabs label="For the client" parts={parts} value={part} onChoose={(part) => goTo({ name: 'client', part })}>
      <Tabs.Content value="look" tabIndex={-1}>
        <Look job={job} result={result} />
      </Tabs.Content>
      <Tabs.Content value="choices" tabIndex={-1}>
        <Choices job={job} result={result} />
      </Tabs.Content>
      <Tabs.Content value="price" tabIndex={-1}>
        <PricePart job={job} result={result} />
      </Tabs.Content>
      <Tabs.Content value="send" tabIndex={-1}>
        <Send job={job} result={result} />
      </Tabs.Content>
    </PartTabs>
  );
}
