/** Prints which settings the questions that vary are asked in: the settings alone, and nothing that follows from them. */
import { authoredBank } from '../../src/lessons/question-bank.ts';
import { variantsOf } from '../../src/lessons/variants.ts';

const asked = authoredBank().flatMap((question) =>
  question.varies === undefined
    ? []
    : [
        {
          question: question.id,
          family: question.varies,
          settings: Object.fromEntries(
            variantsOf(question).map(({ variation, setting }) => [variation.id, setting]),
          ),
        },
      ],
);
process.stdout.write(JSON.stringify(asked));
