// Loaded before a program: when it ends, tells on standard error its peak of memory in KiB and its processor time in milliseconds.
process.on('exit', () => {
  const { maxRSS, userCPUTime, systemCPUTime } = process.resourceUsage();
  process.stderr.write(`\npeak ${maxRSS} cpu ${Math.round((userCPUTime + systemCPUTime) / 1000)}\n`);
});
