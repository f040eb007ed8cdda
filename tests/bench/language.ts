/** Parsing, linking, evaluating and checking, each against the bare parse of the same text in the same run. */
import { type GeneratedFile, halfwayEdits, lineCount, manySmallFiles, mixedFiles, oneLargeFile } from './generated-projects.ts';
import { LanguageWorkspace } from './language-workspace.ts';
import type { Report } from './report.ts';
import { bestOf } from './timing.ts';

const lines = 4000;
const rounds = 8;

export async function benchLanguage(report: Report): Promise<void> {
    await shape(report, 'one large file', oneLargeFile(lines));
    await shape(report, 'many small files', manySmallFiles(lines));
    await shape(report, 'mixed', mixedFiles(lines));
    await editedFile(report);
    await growth(report);
    await memory(report);
}

async function shape(report: Report, name: string, files: readonly GeneratedFile[]): Promise<void> {
    const workspace = new LanguageWorkspace(files);
    const uris = files.map((file) => file.uri);
    const count = lineCount(files);
    report.title(`${name}: ${files.length} files, ${count} lines`);
    const best = await bestOf(rounds, {
        parse: () => {
            for (const uri of uris) workspace.parse(uri);
        },
        link: () => workspace.link(uris),
        all: async () => {
            for (const document of await workspace.link(uris)) workspace.check(document);
        },
    });
    const perThousand = (milliseconds: number) => `${((milliseconds / count) * 1000).toFixed(1)} ms`;
    report.note(
        `per 1,000 lines: parse ${perThousand(best.parse)}, parse and link ${perThousand(best.link)}, all with evaluation and checks ${perThousand(best.all)}`,
    );
    report.goal({ what: 'warm parse', found: (count / best.parse) * 1000, unit: 'lines a second', atLeast: 25_000 });
}

/** What an edit of one file costs: that file is parsed, linked, evaluated and checked; the shop file stays as it is. */
async function editedFile(report: Report): Promise<void> {
    for (const size of [450, lines]) {
        const files = oneLargeFile(size);
        const workspace = new LanguageWorkspace(files);
        const [shop, edited] = files.map((file) => file.uri) as [string, string];
        await workspace.link([shop, edited]);
        const texts = halfwayEdits(files[1]?.text ?? '');
        let edits = 0;
        const best = await bestOf(size < 1000 ? 40 : rounds, {
            parse: () => workspace.parse(edited),
            all: async () => {
                edits += 1;
                workspace.checkEdited(await workspace.edit(edited, texts[edits % texts.length] ?? ''));
            },
        });
        report.title(`an edited file of ${lineCount(files.slice(1))} lines`);
        report.note(`bare parse ${best.parse.toFixed(1)} ms, parse, link, evaluate and check ${best.all.toFixed(1)} ms`);
        report.goal({ what: 'all of it against the bare parse', found: best.all / best.parse, unit: 'times', atMost: 3 });
        if (size < 1000) report.goal({ what: 'what the language does at a keystroke', found: best.all, unit: 'ms', atMost: 20 });
    }
}

async function growth(report: Report): Promise<void> {
    report.title('growth');
    const [small, large] = [oneLargeFile(4000), oneLargeFile(16_000)];
    const [four, sixteen] = [new LanguageWorkspace(small), new LanguageWorkspace(large)];
    const uris = small.map((file) => file.uri);
    const best = await bestOf(4, { four: () => four.link(uris), sixteen: () => sixteen.link(uris) });
    report.goal({ what: 'parse and link of 16,000 lines against 4,000', found: best.sixteen / best.four, unit: 'times', atMost: 5 });
    const tenth = new LanguageWorkspace(manySmallFiles(10_000));
    const whole = new LanguageWorkspace(manySmallFiles(100_000));
    const run = async (workspace: LanguageWorkspace, files: readonly GeneratedFile[]) => {
        for (const document of await workspace.link(files.map((file) => file.uri))) workspace.check(document);
    };
    const all = await bestOf(1, {
        tenth: () => run(tenth, manySmallFiles(10_000)),
        whole: () => run(whole, manySmallFiles(100_000)),
    });
    report.goal({ what: 'all of 100,000 lines against 10,000', found: all.whole / all.tenth, unit: 'times', atMost: 13 });
}

async function memory(report: Report): Promise<void> {
    report.title('memory');
    const collect = globalThis.gc;
    if (!collect) {
        report.note('not measured: run it with --expose-gc');
        return;
    }
    const files = oneLargeFile(16_000);
    const workspace = new LanguageWorkspace(files);
    await workspace.link([files[0]?.uri ?? '']);
    const before = await memoryInUse(collect);
    const documents = await workspace.link(files.map((file) => file.uri));
    for (const document of documents) workspace.check(document);
    const kept = (await memoryInUse(collect)) - before;
    const casework = documents.map((document) => workspace.construct(document));
    const open = (await memoryInUse(collect)) - before - kept;
    const perLine = (bytes: number) => bytes / lineCount(files) / 1000;
    report.goal({ what: 'memory kept for a file that was checked', found: perLine(kept), unit: 'kB a line', atMost: 8 });
    report.note(`the casework of ${casework.length} files, kept while they are open: ${perLine(open).toFixed(1)} kB a line more`);
}

/** Bytes in use, once what the last turn still held is gone. */
async function memoryInUse(collect: () => unknown): Promise<number> {
    await new Promise((resolve) => setTimeout(resolve, 100));
    collect();
    return process.memoryUsage().heapUsed;
}
