/** Long enough that whoever opened a case to change it has begun. */
const quiet = 3000;

/** Once nobody has typed for a while: fetching the whole page must not hold up a key. */
export function onceQuiet(): Promise<void> {
  return new Promise((done) => {
    const end = (): void => {
      removeEventListener('input', again, true);
      done();
    };
    let timer = setTimeout(end, quiet);
    const again = (): void => {
      clearTimeout(timer);
      timer = setTimeout(end, quiet);
    };
    addEventListener('input', again, true);
  });
}
