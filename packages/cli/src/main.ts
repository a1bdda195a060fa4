process.stderr.write('Usage: foregone <command> [note.md]\n');
process.exitCode = 64;
