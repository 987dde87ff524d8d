// A form on a dealer's own page: what a visitor types is judged as it is typed, and sent nowhere.
import { answerNow, InputError, towFit } from '@tarebook/rules';

const form = document.querySelector('form');
const output = document.querySelector('output');
const cautions = document.querySelector('#cautions');
const fields = [...form.elements];

const list = (lines) => {
  cautions.replaceChildren(
    ...lines.map((line) => Object.assign(document.createElement('li'), { textContent: line })),
  );
};

function judge() {
  const told = fields.filter(({ value }) => value.trim() !== '');
  const facts = Object.fromEntries(told.map(({ name, value }) => [name, value]));
  for (const field of fields) field.setCustomValidity('');
  try {
    const { outcome, sentence, cautions: lines } = answerNow(towFit, { facts });
    output.dataset.outcome = outcome;
    output.textContent = sentence;
    list(lines);
  } catch (problem) {
    if (!(problem instanceof InputError)) throw problem;
    // Each refusal names its field, and says what would be right.
    for (const { fact, wanted } of problem.problems) {
      form.elements[fact]?.setCustomValidity(`Please write ${wanted}.`);
    }
    output.dataset.outcome = 'not-read';
    output.textContent = fields.map((field) => field.validationMessage).find(Boolean) ?? '';
    list([]);
  }
}

form.addEventListener('input', judge);
