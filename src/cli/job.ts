import { runJob } from './runJob';

const { status, out, err } = await runJob(process.argv.slice(2));
for (const line of out) process.stdout.write(`${line}\n`);
for (const line of err) process.stderr.write(`${line}\n`);
process.exitCode = status;
