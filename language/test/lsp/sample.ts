// One design and its shop file, for all tests of the editor: small, and with something of everything. (An invented client.)

export const shop = `edition 1
use casewright.species
use casewright.panels

/// The show plywood.
material Ply like HardwoodPlywood { species WhiteOak   thickness 3/4in   actual 0.720in ± 0.010in   modulusAlong 840000 psi }
material Ply4 like Ply { thickness 1/4in   actual 0.205in }
material Oak : lumber { species WhiteOak   rough 4/4   planed 3/4in   boards 5in to 9in wide, 8ft to 12ft long }

/// A thin strip, its arrises softened.
edging Lipped { band 1/8in of Oak   round 1/16in }
joint Fixed { pocket #8 x 1 1/4in   spacing 5in   glue }
joint BackFix { screw #8 x 1 1/4in   spacing 6in }
private let reveal = 1/8in
`;

export const design = `edition 1
use "shop.case"

project "Mill Street bookcases" {
    client "Mill Street Library"
    build  2 Bookcase(tiers = 2)
}

goods Atlas { size 12in wide 10in deep 15in high   mass 4lb }

// How wide, for whom.
// Two lines, so that they fold.
case Bookcase(tiers: Count = 2) {
    width  36in
    height 60in   anchor 57in high
    depth  12in
    let gap = 1/4in

    side Left, Right of Ply {
        edge front Lipped
        edge back  rabbet 3/8in deep for back
    }
    every shelf { of Ply   edge front Lipped }
    shelf Floor at 4in
    shelf Crown at 2 * gap below top
    shelf Tier[tiers] above Floor clear equal
    back of Ply4

    join every shelf to every side with Fixed
    join back to every side, every shelf with BackFix
    hold Atlas on Tier[1]
    require Tier[1].clear >= 15in because "an atlas"
}
`;
