import type { core } from 'zod';

type Issue = core.$ZodIssue;

/** What is wrong with one field, in plain words without a full stop, such as `a number is missing`. */
export function issueWords(issue: Issue): string {
  if (!librarysOwn.test(issue.message)) return issue.message.replace(/\.$/, '');
  switch (issue.code) {
    case 'invalid_type': {
      const wanted = kindWords[issue.expected] ?? 'a value of another form';
      return /received undefined$/.test(issue.message) ? `${wanted} is missing` : `it is not ${wanted}`;
    }
    case 'too_small':
      return `it ${boundWords(issue.origin, issue.inclusive === false ? 'more than' : 'at least', issue.minimum)}`;
    case 'too_big':
      return `it ${boundWords(issue.origin, issue.inclusive === false ? 'less than' : 'at most', issue.maximum)}`;
    case 'invalid_value':
      return `it is none of ${issue.values.map(String).join(', ')}`;
    case 'invalid_union':
      return 'it is none of the forms known here';
    case 'unrecognized_keys':
      return `it has fields that are not known: ${issue.keys.join(', ')}`;
    case 'custom':
    case 'not_multiple_of':
    case 'invalid_format':
    case 'invalid_key':
    case 'invalid_element':
      return 'it has another form';
    default:
      return issue satisfies never;
  }
}

/** How the library's own messages begin; any other was written for this field. */
const librarysOwn = /^(Invalid|Too small|Too big|Unrecognized)/;

const kindWords: Readonly<Record<string, string>> = {
  string: 'a text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list',
  object: 'an object',
  tuple: 'a list',
};

function boundWords(origin: string, bound: string, limit: number | bigint): string {
  switch (origin) {
    case 'string':
      return `must have ${bound} ${counted(limit, 'character')}`;
    case 'array':
      return `must have ${bound} ${counted(limit, 'entry', 'entries')}`;
    default:
      return `must be ${bound} ${limit}`;
  }
}

function counted(count: number | bigint, one: string, many = `${one}s`): string {
  return `${count} ${Number(count) === 1 ? one : many}`;
}
