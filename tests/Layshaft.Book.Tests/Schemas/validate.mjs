// Judges files and values by the schemas with a validator that shares no code with the reader.
// Standard input: {schemas: {kind: schema}, files: [{name, kind, text}], trees: [{kind, value}], values: [{schema, texts}]}.
// Standard output: {files: [{name, errors: [{line, column, keyword}]}], trees: [boolean], values: [[boolean]]}.
import { readFileSync } from "node:fs";
import Ajv from "ajv";
import { LineCounter, isMap, parseDocument } from "yaml";

const asked = JSON.parse(readFileSync(0, "utf8"));
const ajv = new Ajv({ allErrors: true, strict: true, allowUnionTypes: true });
const validators = Object.fromEntries(Object.entries(asked.schemas).map(([kind, schema]) => [kind, ajv.compile(schema)]));

function placeOf(document, lines, error) {
  const path = error.instancePath.split("/").slice(1).map(p => p.replaceAll("~1", "/").replaceAll("~0", "~"));
  let node = path.length ? document.getIn(path, true) : document.contents;
  if (error.keyword === "additionalProperties" && isMap(node)) {
    node = node.items.find(p => String(p.key.value) === error.params.additionalProperty).key;
  }
  const { line, col } = lines.linePos(node.range[0]);
  return { line, column: col, keyword: error.keyword };
}

const files = asked.files.map(({ name, kind, text }) => {
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines });
  if (document.errors.length) {
    return { name, errors: document.errors.map(e => ({ ...lines.linePos(e.pos[0]), column: lines.linePos(e.pos[0]).col, keyword: `yaml ${e.code}` })) };
  }
  const validate = validators[kind];
  return validate(document.toJS()) ? { name, errors: [] } : { name, errors: validate.errors.map(e => placeOf(document, lines, e)) };
});
const trees = asked.trees.map(({ kind, value }) => validators[kind](value));
const values = asked.values.map(({ schema, texts }) => {
  const validate = ajv.compile(schema);
  return texts.map(text => validate(text));
});
process.stdout.write(JSON.stringify({ files, trees, values }));
