// Reads every Power Query program in a document with the parser of the language's maker. It cannot be run here: there is no free engine.
const { readFileSync } = require('fs');
const { DefaultSettings, TaskUtils } = require('@microsoft/powerquery-parser');

async function main(document) {
  const programs = [...readFileSync(document, 'utf8').matchAll(/^```m\n([\s\S]*?)^```$/gm)].map(([, program]) => program);
  let faults = 0;
  for (const program of programs) {
    const reading = await TaskUtils.tryLexParse(DefaultSettings, program);
    if (TaskUtils.isError(reading)) {
      faults += 1;
      console.error(`${document}: ${reading.error.message}\n${program}`);
    }
  }
  console.log(`${programs.length} programs, ${faults} faults`);
  process.exitCode = faults === 0 && programs.length > 0 ? 0 : 1;
}

main(process.argv[2]);
