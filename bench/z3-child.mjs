// Answers one question in SMT-LIB 2 and prints what the solver says.
import { readFileSync } from 'node:fs';
import { init } from 'z3-solver';

const { Z3 } = await init();
const config = Z3.mk_config();
const context = Z3.mk_context(config);
console.log((await Z3.eval_smtlib2_string(context, readFileSync(process.argv[2], 'utf8'))).trim());
// Its threads would keep the process alive.
process.exit(0);
