const MOST_LOOKS = 25;

/**
 * A picture once it is the same twice in a row, a second apart.
 * @throws where what is shown does not come to rest
 */
export async function atRest(shoot: () => Promise<Buffer>): Promise<Buffer> {
  let last = await shoot();
  for (let look = 0; look < MOST_LOOKS; look++) {
    await new Promise((passed) => setTimeout(passed, 1000));
    const now = await shoot();
    if (now.equals(last)) return now;
    last = now;
  }
  throw new Error('what is shown does not come to rest');
}
