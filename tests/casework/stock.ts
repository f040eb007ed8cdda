/** Stock, edges and joints with round numbers, for designs whose sizes a test works out by hand. */
export const stock = `
material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }
material Quarter : plywood { thickness 1/4in   sheet 48in x 96in   grain length }
material Half : plywood { thickness 1/2in   sheet 48in x 96in   grain length }
material Oak : lumber { planed 3/4in   boards 5in to 9in wide, 8ft to 12ft long }
material Metric : plywood { thickness 18mm   sheet 1220mm x 2440mm   grain length }
edging Band { band 1/8in of Oak }
edging Nose { nosing 3/4in of Oak { high 1in } }
joint Glued { glue }
joint Dado { dado 1/4in deep   glue }
joint Tenon { tenon 1/3 thick 1/2in long   glue }
joint Gap { rest on Pin   gap 1/16in at each end   loose }
bought Pin { hole 5mm wide 10mm deep }
`;

/** A case of 3/4in plywood, 40in wide, 60in high and 12in deep, with these words in it. */
export function caseWith(words: string): string {
    return `${stock}
case C of Ply {
    width 40in
    height 60in
    depth 12in
${words}
}
`;
}
