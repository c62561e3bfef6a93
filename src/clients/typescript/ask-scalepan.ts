// Sends three requests to a running Scalepan through the generated TypeScript client: node ask-scalepan.js http://127.0.0.1:8080
import { ComparisonApi, Configuration, FunctionalUnitId, type PublishedBeside, RecordsApi, ResponseError } from './index';

async function ask(): Promise<void> {
  const service = new Configuration({ basePath: process.argv[2] });

  // Two published products on one comparison basis.
  const answer = await new ComparisonApi(service).compare({
    products: ['mealworm'],
    against: 'beef',
    per: FunctionalUnitId.KgProtein,
  });
  console.log(answer.items[0].againstSentence);

  // A farm from its records (invented), and a published product beside it.
  const { footprints } = await new RecordsApi(service).footprint({
    footprintRequest: {
      system: {
        kind: 'insects',
        product: 'superworm',
        region: 'portugal',
        harvest: { kgPerYear: 240 },
        feed: [{ ingredient: 'wheat-bran', kg: 650, burden: 'mass' }],
        energy: [{ carrier: 'grid-electricity', amount: 400 }],
      },
      compare: { products: ['chicken'] },
    },
  });
  console.log(footprints[0].footprint?.text);
  console.log((footprints[0].compare[0] as PublishedBeside).sentence);

  // A misspelt name is refused, with a hint.
  try {
    await new ComparisonApi(service).compare({ products: ['mealwurm'], against: 'beef' });
  } catch (refusal) {
    if (!(refusal instanceof ResponseError)) throw refusal;
    const problem = await refusal.response.json();
    console.log(refusal.response.status, problem.errors[0].did_you_mean[0]);
  }
}

void ask();
