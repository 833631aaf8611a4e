import { expect, test } from 'vitest';
import { answersOf } from '../../../src/components/question/answers.ts';

const lesson = `## Questions

<Question id="one" asks="What first?">
  <Choice says="Push">A push breaks it.</Choice>
  <Choice right says="Look">Yes. **Look** for the notch.</Choice>
</Question>

<Question id="two" asks="And then?">
  <Choice right says="Nothing">Yes.</Choice>
  <Choice says="Push">No.</Choice>
</Question>
`;

test('the printed answers are the right choices, in order, each with its reason', () => {
  expect(answersOf('lesson.mdx', lesson)).toEqual([
    { asks: 'What first?', says: 'Look', why: 'Yes. Look for the notch.' },
    { asks: 'And then?', says: 'Nothing', why: 'Yes.' },
  ]);
});

test('a lesson without questions has no page of answers', () => {
  expect(answersOf('lesson.mdx', '## Only text\n\nHere.')).toEqual([]);
});
