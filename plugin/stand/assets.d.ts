/** Scores that the bundler puts into the page as text. */
declare module '*.musicxml' {
  const text: string;
  export default text;
}
