import ts from 'typescript';

export interface Import {
  specifier: string;
  /** From 1. */
  line: number;
}

/**
 * Everything that a TypeScript file names to load: imports and re-exports of values and types, `import()`, `require`,
 * `new URL('…', import.meta.url)` and `import.meta.glob`.
 */
export function importsOf(file: string, text: string): Import[] {
  const kind = file.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, false, kind);
  const found: Import[] = [];
  const visit = (node: ts.Node): void => {
    for (const name of namedBy(node)) {
      found.push({
        specifier: name.text,
        line: source.getLineAndCharacterOfPosition(name.getStart(source)).line + 1,
      });
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

function namedBy(node: ts.Node): ts.StringLiteralLike[] {
  if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) return literals(node.moduleSpecifier);
  if (ts.isExternalModuleReference(node)) return literals(node.expression);
  if (ts.isImportTypeNode(node)) return ts.isLiteralTypeNode(node.argument) ? literals(node.argument.literal) : [];
  if (ts.isCallExpression(node) && loads(node.expression)) return literals(node.arguments[0]);
  if (ts.isNewExpression(node) && isNamed(node.expression, 'URL') && node.arguments?.length === 2) {
    return literals(node.arguments[0]);
  }
  return [];
}

function loads(called: ts.Expression): boolean {
  if (called.kind === ts.SyntaxKind.ImportKeyword || isNamed(called, 'require')) return true;
  return ts.isPropertyAccessExpression(called) && called.name.text === 'glob' && ts.isMetaProperty(called.expression);
}

function isNamed(node: ts.Expression, name: string): boolean {
  return ts.isIdentifier(node) && node.text === name;
}

/** The string itself, or the strings of an array. */
function literals(node: ts.Node | undefined): ts.StringLiteralLike[] {
  if (node === undefined) return [];
  if (ts.isArrayLiteralExpression(node)) return node.elements.flatMap(literals);
  return ts.isStringLiteralLike(node) ? [node] : [];
}
