import { expect, test } from 'vitest';
import type { SemanticTokens } from 'vscode-languageserver';
import { Editor } from './editor.js';
import { design, shop } from './sample.js';

test('colours: names by what they stand for, properties, steps, faces', async () => {
    const editor = await Editor.open(design, { 'shop.case': shop });
    const provider = editor.lsp.SemanticTokenProvider!;
    const { data } = (await provider.semanticHighlight(editor.document(), { textDocument: { uri: editor.uri() } })) as SemanticTokens;
    const { tokenTypes, tokenModifiers } = provider.semanticTokensOptions.legend;
    const lines = design.split('\n');
    const byLine = new Map<number, string[]>();
    let [line, character] = [0, 0];
    for (let at = 0; at < data.length; at += 5) {
        const [downBy = 0, rightBy = 0, length = 0, type = 0, modifiers = 0] = data.slice(at, at + 5);
        line += downBy;
        character = downBy === 0 ? character + rightBy : rightBy;
        const words = lines[line]!.slice(character, character + length);
        const said = [tokenTypes[type], ...tokenModifiers.filter((_, bit) => modifiers & (1 << bit))].join('+');
        byLine.set(line, [...(byLine.get(line) ?? []), `${words}:${said}`]);
    }
    expect([...byLine.values()].map((tokens) => tokens.join(' ')).join('\n')).toMatchInlineSnapshot(`
      "project:keyword
      client:property
      Bookcase:class tiers:parameter
      goods:keyword Atlas:class+declaration size:property mass:property
      case:keyword Bookcase:class+declaration tiers:parameter+declaration Count:type
      width:property
      height:property anchor:property
      depth:property
      gap:variable+declaration
      side:keyword Left:variable+declaration Right:variable+declaration Ply:class
      front:enumMember Lipped:function
      back:enumMember rabbet:function back:keyword
      shelf:keyword Ply:class front:enumMember Lipped:function
      shelf:keyword Floor:variable+declaration
      shelf:keyword Crown:variable+declaration gap:variable+readonly top:enumMember
      shelf:keyword Tier:variable+declaration tiers:parameter Floor:variable clear:property equal:enumMember
      back:keyword Ply4:class
      shelf:keyword side:keyword Fixed:function
      back:keyword side:keyword shelf:keyword BackFix:function
      Atlas:class Tier:variable
      Tier:variable clear:property"
    `);
});
