// The server as Node keeps it in a snapshot of its memory: made, with the library read, and waiting for a client.
import { startupSnapshot } from 'node:v8';
import { readMarks, rules } from 'casewright-shared/rules';
import { URI } from 'langium';
import { type Connection, createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { serve } from '../lsp/language-server.js';
import { createNodeServices } from './node-services.js';

type Services = ReturnType<typeof createNodeServices>;

let connection: Connection | undefined;
const services = createNodeServices(() => {
    if (!connection) throw new Error('there is no client while a start is prepared');
    return connection;
});

/** Reads the library, as the first file that uses it would. */
async function readLibrary({ shared }: Services): Promise<void> {
    await build(shared, 'edition 1\nuse casewright.species\nuse casewright.panels\nuse casewright.fasteners\n');
}

async function build(shared: Services['shared'], text: string): Promise<void> {
    const uri = URI.parse('memory:/prepared.case');
    const document = shared.workspace.LangiumDocumentFactory.fromString(text, uri);
    shared.workspace.LangiumDocuments.addDocument(document);
    await shared.workspace.DocumentBuilder.build([document], { validation: false });
    await shared.workspace.DocumentBuilder.update([], [uri]);
}

/** What a parser finds out of a rule when it first meets it, and the code that a check runs through, are in the snapshot as well. */
async function warmUp(): Promise<void> {
    const texts = rules.flatMap(({ examples }) => [...examples.good, ...examples.bad].map((example) => readMarks(example).text));
    for (const text of texts) services.casewright.parser.LangiumParser.parse(text);
    const { shared, casewright } = createNodeServices(() => {
        throw new Error('these services are thrown away before there is a client');
    });
    for (const text of texts) {
        const document = shared.workspace.LangiumDocumentFactory.fromString(text, URI.parse('memory:/warm.case'));
        await shared.workspace.DocumentBuilder.build([document], { validation: false });
        void casewright.analysis.Analyses.of(document).findings;
    }
}

async function prepare(): Promise<void> {
    await readLibrary(services);
    await warmUp();
    startupSnapshot.setDeserializeMainFunction(() => {
        // asked only whether it starts at all
        if (process.argv.includes('--try')) return;
        connection = createConnection(ProposedFeatures.all);
        serve(services.shared);
    });
}

void prepare();
