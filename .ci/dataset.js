// Reads every table of a data package with Frictionless Data's own library: schema, types, constraints and foreign keys.
const { Package } = require('datapackage');

async function main(descriptor) {
  const dataset = await Package.load(descriptor);
  const faults = dataset.errors.map(fault => `${descriptor}: ${fault.message}`);
  let rows = 0;
  for (const table of dataset.resources.filter(resource => resource.tabular)) {
    try {
      rows += (await table.read({ relations: true })).length;
    } catch (fault) {
      for (const one of fault.multiple ? fault.errors : [fault]) {
        faults.push(`${table.name}: ${one.message}`);
      }
    }
  }
  faults.forEach(fault => console.error(fault));
  console.log(`${dataset.resources.length} tables, ${rows} rows, ${faults.length} faults`);
  process.exitCode = faults.length === 0 && rows > 0 ? 0 : 1;
}

main(process.argv[2]);
