import { targets } from './targets';
import { tryCases } from './tryCases';

/*
 * The child of `npm run fuzz`: tries the cases of one target batch by batch and tells each before it begins, so that the
 * parent can name a batch that hangs.
 */
// The reader of DXF talks about what it passes over.
console.log = console.warn = console.error = () => undefined;

const [name, seed, count, size] = process.argv.slice(2) as [string, string, string, string];
const target = targets.find((each) => each.name === name)!;

for (let done = 0, batch = 0; done < Number(count); batch++) {
  const many = Math.min(Number(size), Number(count) - done);
  process.send!({ batch: Number(seed) + batch, done });
  const failure = await tryCases(target, Number(seed) + batch, many);
  if (failure !== null) {
    process.send!({ failure });
    break;
  }
  done += many;
  process.send!({ batch: Number(seed) + batch, done });
}
process.disconnect();
