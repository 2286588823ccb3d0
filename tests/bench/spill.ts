import { spawn } from "node:child_process";
import { createInterface } from "node:readline";

/** A spill of ours beside a plain one of the engine, each line answered by one running `greybody calc`. */
const PLAIN = "=SEQUENCE(100000)*1";
const OURS = "=GREY.CORRECTED(SEQUENCE(100000,1,40,0.001),0.9,22)";
const MOST = 3;
const ROUNDS = 10;

const calc = spawn(process.execPath, ["dist/cli.js", "calc"], { stdio: ["pipe", "pipe", "inherit"] });
const answers = createInterface({ input: calc.stdout })[Symbol.asyncIterator]();

async function time(formula: string): Promise<number> {
  const start = performance.now();
  calc.stdin.write(`${formula}\n`);
  await answers.next();
  return performance.now() - start;
}

let plain = Infinity;
let ours = Infinity;
for (let round = 0; round < ROUNDS; round++) {
  plain = Math.min(plain, await time(PLAIN));
  ours = Math.min(ours, await time(OURS));
}
calc.stdin.end();
const ratio = ours / plain;
console.log(`A spill of 100,000 corrected readings through greybody calc (needs npm run build), best of ${ROUNDS}`);
console.log(
  `  against =SEQUENCE(100000)*1  ${ratio.toFixed(2)}  (limit ${MOST}; ${ours.toFixed(0)} ms, plain ${plain.toFixed(0)} ms)`,
);
if (ratio > MOST) process.exitCode = 1;
