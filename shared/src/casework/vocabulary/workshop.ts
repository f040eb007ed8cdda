/** Properties of the workshop and what is around a design: the shop, the project, the site, the way in, what is bought. */
import { choice, dimensions, either, listOf, massPer, type Properties, price, property, shape, sizes, thing, timePer } from './row.js';
import { sentences } from './sentences.js';

export const routeProperties: Properties = {
    doorway: property(sizes(2), 'The smallest door on the way, width by height.', 'doorway 32in x 80in', { repeats: true }),
    corner: property(sizes(2), 'Where two halls meet square: how wide the one and the other is.', 'corner 36in x 42in', { repeats: true }),
    ceiling: property(shape.length, 'The lowest ceiling on the way.', 'ceiling 8ft'),
    stair: property(shape.length, 'The narrowest stair on the way.', 'stair 34in'),
};

/** Said by the shop for all its work, and by a project for itself. */
const pricing: Properties = {
    overhead: property(
        shape.ratio,
        'What rent, machines and the telephone add to the cost, as a share of materials and labour together.',
        'overhead 18%',
    ),
    margin: property(
        shape.ratio,
        'The share of the price that is profit: at `margin 20%` what costs 80 is sold for 100. It is below 100 %.',
        'margin 20%',
    ),
    tax: property(shape.ratio, 'Tax on the price.', 'tax 8%'),
};

const alternative: Properties = {
    take: property(
        thing('material', 'species', 'coating', 'finish', 'edging', 'joint', 'fastener', 'bought'),
        'What is taken, and for what of the same kind.',
        'take Oak for Walnut',
        { clauses: ['for'], repeats: true },
    ),
};

export const projectProperties: Properties = {
    client: property(shape.text, 'Who it is for.', 'client "Kiln Lane Pottery"'),
    revision: property(shape.text, 'Which state of the design this is.', 'revision "B"'),
    units: property(choice('in', 'mm'), 'How sizes are printed.', 'units mm'),
    sag: property(shape.ratio, 'How much of its span a shelf may sag under what it carries; 1/144 where nothing is said.', 'sag 1/240'),
    climate: property(
        { is: 'interval', dimension: 'none' },
        'Relative humidity of the room, from the driest month to the dampest; 30 % to 60 % where nothing is said.',
        'climate 25% to 55%',
    ),
    slope: property(
        shape.ratio,
        'How far the floor falls from the wall to the room, as a share of the way: cases that stand by themselves are looked at for tipping on it.',
        'slope 1/4in / 48in',
    ),
    carpet: property(
        shape.length,
        'How much higher the back of a case stands than its front, on the strip that holds a carpet along a wall.',
        'carpet 3/8in',
    ),
    accessible: property(
        shape.truth,
        'Whether it stands where the public comes and rules of access hold: then its shelves are looked at for reach, and its parts for standing out.',
        'accessible yes',
    ),
    route: property({ is: 'block', properties: routeProperties }, 'The way into the house.', 'route { doorway 32in x 80in   ceiling 8ft }'),
    match: sentences.match!,
    ...pricing,
    validity: property(shape.time, 'How long the quote is valid.', 'validity 30 days'),
    terms: property(shape.text, 'Terms of the quote, a sentence each.', 'terms "Half with the order, half on delivery."', {
        repeats: true,
    }),
    alternative: property(
        { is: 'newName', properties: alternative },
        'The same built of other things: the quote says what it would cost.',
        'alternative InOak { take Oak for Walnut }',
        { repeats: true },
    ),
};

export const siteProperties: Properties = {
    wall: property(shape.nothing, 'Which walls there are, and how far apart.', 'wall back', {
        repeats: true,
        sentence: true,
        built: false,
    }),
    floor: property(shape.lengthWithTolerance, 'How far the floor is off level.', 'floor 0mm ± 8mm', { built: false }),
    ceiling: property(shape.lengthWithTolerance, 'Height of the ceiling.', 'ceiling 2630mm ± 10mm', { built: false }),
    moisture: property(
        { is: 'interval', dimension: 'none' },
        'Moisture of wood there, from the driest month to the wettest.',
        'moisture 7% to 11%',
        { built: false },
    ),
};

const bits: Properties = {
    flush: property(listOf(shape.length), 'Flush-trim bits, by diameter.', 'flush 1/2in'),
    straight: property(listOf(shape.length), 'Straight bits, by diameter.', 'straight 1/4in, 1/2in'),
    rabbet: property(listOf(shape.length), 'Rabbet bits, by depth of cut.', 'rabbet 3/8in'),
    roundover: property(listOf(shape.length), 'Roundover bits, by radius.', 'roundover 1/8in, 1/4in'),
    chamfer: property(listOf(shape.length), 'Chamfer bits, by depth of cut.', 'chamfer 1/2in'),
};

const clamp: Properties = {
    count: property(shape.count, 'How many the shop has.', 'count 24'),
    reach: property(shape.length, 'How far it opens.', 'reach 50in'),
};

const batten: Properties = {
    thickness: property(shape.length, 'Its thickness, in which it is bent.', 'thickness 3/16in'),
    width: property(shape.length, 'Its width, square to the bend.', 'width 1in'),
    length: property(shape.length, 'How long it is.', 'length 8ft'),
    species: property(thing('species'), 'The wood that it is of.', 'species WhiteAsh'),
};

/** Said by the shop for all its curves, and by a curve for itself. */
export const battenProperty = property(
    { is: 'block', properties: batten },
    'The strip that curves are drawn with: pulled to a bow by a string, or laid along pins.',
    'batten { thickness 3/16in   width 1in   length 8ft   species WhiteAsh }',
);

const caul: Properties = {
    height: property(shape.length, 'Its size in the direction in which it presses.', 'height 2 1/2in'),
    width: property(shape.length, 'How wide it bears on the panel.', 'width 1 3/4in'),
    species: property(thing('species'), 'The wood that it is of.', 'species HardMaple'),
    spacing: property(shape.length, 'From the middle of one caul to that of the next.', 'spacing 6in'),
    force: property(shape.force, 'What the clamp at each end gives.', 'force 1000 lbf'),
};

const each = (doc: string, example: string) => property(shape.time, doc, example);
const times: Properties = {
    sheet: each('To bring one sheet to the saw.', 'sheet 10 minutes'),
    cut: each('One cut at the saw, with setting the fence.', 'cut 2 minutes'),
    board: each('To joint and plane one board.', 'board 20 minutes'),
    lamination: each('To glue up one board of layers.', 'lamination 30 minutes'),
    template: each('To cut one edge to a curve.', 'template 25 minutes'),
    band: property(timePer('ft', 'm'), 'To glue on a band or nosing and trim it.', 'band 4 minutes per ft'),
    slot: each('One dado, groove, rabbet, mortise or corner cut.', 'slot 5 minutes'),
    biscuit: each('One slot for a biscuit.', 'biscuit 1 minute'),
    pocket: each('One pocket.', 'pocket 0.5 minutes'),
    hole: each('One hole for a dowel or a pin.', 'hole 0.5 minutes'),
    screw: each('To bore for one screw, nail or bolt and drive it.', 'screw 0.5 minutes'),
    part: each('To fit one part and put it where it belongs.', 'part 10 minutes'),
    sand: property(timePer('ft2', 'm2'), 'To sand once.', 'sand 1 minute per ft2'),
    coat: property(timePer('ft2', 'm2'), 'To put one coat on.', 'coat 0.5 minutes per ft2'),
};

export const shopProperties: Properties = {
    kerf: property(shape.length, 'Width of the saw cut.', 'kerf 1/8in'),
    trim: property(
        either(shape.length, dimensions('each')),
        'Taken off each edge of a sheet before anything is cut from it.',
        'trim 1/4in each edge',
    ),
    oversize: property(
        shape.length,
        'Added all round a laminated blank, and along an edge that is routed to a template.',
        'oversize 1/4in',
    ),
    bandLong: property(shape.length, 'What a band or nosing is left long at each end.', 'bandLong 1/2in'),
    bandOver: property(shape.length, 'What a band stands over each face before it is trimmed.', 'bandOver 1/16in'),
    bentLong: property(
        shape.length,
        'What a board that is bent is left long at each end: its ends are the last to take the bend, and are trimmed after it.',
        'bentLong 1in',
    ),
    millLong: property(shape.length, 'Left on the length of a board that is planed: its ends are cut square last.', 'millLong 1in'),
    millWide: property(shape.length, 'Left on the width of a board or strip that is jointed on its edges.', 'millWide 1/4in'),
    millFace: property(shape.length, 'Taken off each face of a rough board, and off the sawn face of a strip.', 'millFace 1/16in'),
    boardEnd: property(shape.length, 'Cut off each end of a rough board, for checks and for what the planer snipes.', 'boardEnd 2in'),
    boardEdge: property(shape.length, 'Taken off each edge of a rough board to make it straight.', 'boardEdge 1/8in'),
    thinRip: property(shape.length, 'Thinner strips are not ripped between blade and fence.', 'thinRip 1/4in'),
    rip: property(shape.length, 'Widest cut of the table saw.', 'rip 52in'),
    planer: property(shape.length, 'Widest board the planer takes.', 'planer 20in'),
    bits: property({ is: 'block', properties: bits }, 'Router bits.', 'bits { flush 1/2in   roundover 1/8in, 1/4in }'),
    clamp: property({ is: 'newName', properties: clamp }, 'Clamps of one sort.', 'clamp Bar { count 16   reach 50in }', { repeats: true }),
    batten: battenProperty,
    caul: property(
        { is: 'block', properties: caul },
        'Bearers across a panel, in pairs with a clamp at each end, that press it while its glue sets.',
        'caul { height 2 1/2in   width 1 3/4in   species HardMaple   spacing 6in   force 1000 lbf }',
    ),
    tilt: property(shape.angle, 'How far the blade of the table saw tilts.', 'tilt 45deg'),
    lift: property(shape.mass, 'What one person lifts.', 'lift 50lb'),
    labor: property(price('hour'), 'What an hour costs.', 'labor 65 USD per hour'),
    times: property(
        { is: 'block', properties: times },
        'How long each operation takes; what is not stated is a default of this tool without a source.',
        'times { sheet 12 minutes   cut 2 minutes   band 5 minutes per ft }',
    ),
    glue: property(price('lb', 'oz', 'kg'), 'What wood glue costs.', 'glue 5 USD per lb'),
    ...pricing,
};

export const boughtProperties: Properties = {
    needs: property(shape.nothing, 'What it wants of the parts it is fixed to.', 'needs door 3/4in', { sentence: true, built: false }),
    carries: property(either(massPer('pair'), shape.mass), 'What it carries.', 'carries 75lb per pair'),
    hole: property(either(dimensions('wide', 'deep'), shape.length), 'The hole it goes in.', 'hole 5mm wide 10mm deep'),
    mortise: property(dimensions('long', 'wide', 'deep'), 'The mortise it lies in.', 'mortise 2 1/2in long 3/4in wide 3/32in deep'),
    lengths: property(
        either(listOf(shape.length), { is: 'interval', dimension: 'length' }),
        'Lengths it comes in.',
        'lengths 12in to 24in every 2in',
    ),
};
