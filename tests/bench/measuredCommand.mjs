/** The built command with the arguments it is given; at its end it tells its peak memory, in MB. */
process.on('exit', () => {
  console.error(`peak ${Math.round(process.resourceUsage().maxRSS / 1024)}`);
});
await import('../../dist/bellhand.js');
