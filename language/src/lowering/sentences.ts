// Sentences: who is joined to whom, what a case holds and carries, what must be so. Knows each sentence by itself.
import type { AllowStatement, JoinStatement, Statement } from 'casewright-shared/casework';
import type * as Ast from '../generated/ast.js';
import { lowerCount } from './counts.js';
import { lowerExpression, lowerSelectors } from './expressions.js';
import type { FileLowering } from './file-lowering.js';
import { isBuilt } from './not-built.js';
import { lowerTreatment } from './recipes.js';
import { nextWord } from './source-text.js';
import { declarationSpan, describeName, reportUnknownName } from './unknown-names.js';

export function lowerJoin(file: FileLowering, node: Ast.Join): JoinStatement | undefined {
    const span = file.span(node);
    const left = lowerSelectors(file, node.left, span);
    const right = lowerSelectors(file, node.right, span);
    const joint = lowerTreatment(file, node.joint, 'joint');
    if (node.site !== undefined && node.site !== 'site') {
        file.report('TXT-001', span, {
            message: `a joint is made \`on site\`, not \`on ${node.site}\``,
            hint: 'write `on site`',
            found: `\`on ${node.site}\``,
            needed: '`on site`',
        });
    }
    return left.length > 0 && right.length > 0
        ? { is: 'join', left, right, ...(joint ? { joint } : {}), onSite: node.site === 'site', span }
        : undefined;
}

export function lowerHold(file: FileLowering, node: Ast.Hold): Statement | undefined {
    const span = file.span(node);
    const on = lowerSelectors(file, node.on, span);
    const text = node.goods?.$refText;
    if (!text) {
        return undefined;
    }
    const goods = file.target(node.goods);
    const at = file.spanOfCst(node.goods.$refNode);
    if (!goods) {
        reportUnknownName(file, text, node, at, ['goods']);
        return undefined;
    }
    if (!isBuilt(file, goods)) {
        return undefined;
    }
    if (goods.kind !== 'goods') {
        file.report('NAM-007', at, {
            message: `\`${text}\` is ${describeName(goods)}; a case holds goods`,
            hint: 'declare what it holds: `goods Teapot { size 9in wide 6in deep 7in high }`',
            found: describeName(goods),
            needed: 'goods',
            related: [{ span: declarationSpan(file, goods), message: `\`${text}\` is declared here` }],
        });
        return undefined;
    }
    return { is: 'hold', count: node.count ? lowerCount(file, node.count) : undefined, goods: file.id(goods), on, span };
}

export function lowerLoad(file: FileLowering, node: Ast.Load): Statement {
    const span = file.span(node);
    return { is: 'load', amount: lowerExpression(file, node.amount, span), on: lowerSelectors(file, node.on, span), span };
}

export function lowerRequire(file: FileLowering, node: Ast.Require): Extract<Statement, { is: 'require' }> {
    const span = file.span(node);
    return {
        is: 'require',
        condition: lowerExpression(file, node.condition, span),
        ...(node.reason?.text === undefined ? {} : { because: node.reason.text }),
        span,
    };
}

export function lowerAllow(file: FileLowering, node: Ast.Allow): AllowStatement | undefined {
    const span = file.span(node);
    if (!node.rule) {
        return undefined;
    }
    const ruleSpan = file.word(nextWord(file.text, span.start + 'allow'.length), node.rule);
    const on = lowerSelectors(file, node.on, span);
    if (on.length === 0 && (node.on?.length ?? 0) > 0) {
        return undefined; // on what is unknown or not built: without it, it would hold everywhere
    }
    return { is: 'allow', rule: node.rule, ruleSpan, on, ...(node.reason?.text === undefined ? {} : { because: node.reason.text }), span };
}
