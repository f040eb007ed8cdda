// Columns: values of runs of like lines, comments at the ends of lines. Knows lines: no words, no tree.
import { type Line, widthOf } from './lines.js';

const BEFORE_COMMENT = 4;
/** A line that is longer does not push the comments of its block to the right. */
const WIDEST_ALIGNED = 72;

/** Moves values and comments into columns; changes the lines. */
export function align(lines: readonly Line[]): void {
    for (const group of groupsOf(lines)) {
        for (const run of runsOf(group)) {
            alignValues(run);
        }
    }
    for (const group of groupsOf(lines)) {
        for (const paragraph of group[0]?.group === 0 ? paragraphsOf(group) : [group]) {
            alignComments(paragraph);
        }
    }
}

function groupsOf(lines: readonly Line[]): Line[][] {
    const groups = new Map<number, Line[]>();
    for (const line of lines) {
        const group = groups.get(line.group) ?? [];
        groups.set(line.group, group);
        group.push(line);
    }
    return [...groups.values()];
}

/** Neighbouring lines with one value each, of one kind; comments between them do not part them. */
function runsOf(group: readonly Line[]): Line[][] {
    const runs: Line[][] = [];
    let run: Line[] = [];
    for (const line of group) {
        const isComment = line.pieces.every(({ piece }) => piece.isComment);
        if (line.blankBefore || (!isComment && line.value?.of !== run[0]?.value?.of)) {
            run = [];
        }
        if (line.value && !line.isCopied) {
            if (run.length === 0) {
                runs.push(run);
            }
            run.push(line);
        } else if (!isComment) {
            run = [];
        }
    }
    return runs;
}

function alignValues(run: readonly Line[]): void {
    const widthBefore = ({ pieces, value }: Line): number =>
        pieces.slice(0, value!.index).reduce((width, { text, gap }) => width + gap.length + text.length, 0);
    const widest = Math.max(...run.map(widthBefore));
    for (const line of run) {
        line.pieces[line.value!.index]!.gap = ' '.repeat(widest - widthBefore(line) + 1);
    }
}

function paragraphsOf(group: readonly Line[]): Line[][] {
    const paragraphs: Line[][] = [];
    for (const line of group) {
        if (line.blankBefore || paragraphs.length === 0) {
            paragraphs.push([]);
        }
        paragraphs.at(-1)!.push(line);
    }
    return paragraphs;
}

function alignComments(lines: readonly Line[]): void {
    const commented = lines.filter(({ comment }) => comment);
    const widths = commented.map(widthOf).filter((width) => width <= WIDEST_ALIGNED);
    const column = Math.max(0, ...widths) + BEFORE_COMMENT;
    for (const line of commented) {
        const gap = Math.max(column - widthOf(line), BEFORE_COMMENT);
        line.pieces.push({ piece: line.comment!, text: line.comment!.text, gap: ' '.repeat(gap) });
    }
}
