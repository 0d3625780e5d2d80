/** What `stonetone help` says. */
export const helpText = `Stonetone: the measuring bench, process planner and run log of a small stone-lithography studio.

stonetone serve [--data DIR] [--port N] [--copies FOLDER]
    Serves the screens on this machine only. Port 0 picks a free one. With --copies it saves the data folder into FOLDER
    once a day and reads each copy back; kept are those of 7 days, 4 weeks and 12 months. The folder is remembered, and
    can be chosen, changed or given up on the screen Keeping.
stonetone serve --lan [--address A] [--certificate self | --certificate FILE --key FILE]
    Answers phones and tablets on this machine's private addresses too (or on A alone), each let in with a code that its
    screens show under Phones. Prints the address, a QR code of it and, over https, the certificate's fingerprint.

stonetone compare --stone F --proof F --size 300x400 --out DIR
    [--stone-corners "x,y x,y x,y x,y"] [--proof-corners "x,y x,y x,y x,y"]
    [--stone-repeat F] [--proof-repeat F] [--stone-flat F] [--proof-flat F]
    [--zones zones.json] [--chips chips.json]
    Measures what printed against what was drawn. Corners in px, of the work rectangle on the stone clockwise
    from top left; on the print where the stone's top left, top right, bottom right and bottom left came to lie.
    Ends with 0 measured, 2 bad input, 3 refused (unmirrored or no match).

stonetone plan work.json --out DIR [--paper a4|a3|letter]
    Plans the etch of a work: plan.json, map.pdf (the etch map at true size, in tiles), steps.pdf (the step sheet).
    Ends with 0 for every plan, also one that can't be kept, 2 for bad input.
stonetone plan --media
    Prints the media that plans and zones know.

stonetone mix in.json
    Works out a mixture: dilution, alligation, drops, degrees Baumé, pH, limestone.

stonetone series in.json
    Says whether a series of pulls is steady: {noise: {tone}, tolerance?, pulls: [{n, paper, age?, lights, middles,
    darks, faults?}]}. Ends with 0 for every answer, also "can't tell", 2 for bad input.

stonetone ink in.json
    Where to start a mix of ink from and how many grams: {areasCm2: {light, middle, dark}, solidShare?, coveredCm2?,
    modifierPercent?, proofs?, edition?, viscosityPaS?: {soft, stiff}}. Grams are a range.

stonetone trial design spec.json --out DIR [--paper a4|a3|letter] [--data DIR]
    Lays a test stone out: {stone: {widthMm, heightMm}, stones?, whole?: {name, levels}, sub: {name, levels}, control?,
    patchRepeats?, stripRepeats?, wanted?, seed? …}. Writes design.json, tracing.pdf (true size, both ways round),
    list.csv and steps.csv (who gets what, also in order; not for whoever reads) and readings.csv (to be filled
    in). Says what it could notice.
stonetone trial read --stone F --proof F --size 300x400 --patches patches.json --out DIR [--stone-corners …] [--proof-corners …]
    Reads a test stone made by hand and one print of it: every patch lost, weak, held or filled, with intervals. Corners
    and what else is given are those of compare; given corners of the print count as in order. Writes patches.csv, which
    trial analyse takes, reading.json and the files of compare.
stonetone trial analyse --csv F --response Y [--block B] [--whole W] [--sub S] [--strip P] [--control LEVEL]
    Analyses a table of patches, one a line: Y is what was read; W is given to a whole strip, S to each patch, B is the
    stone (or "row,column"). Columns hold names; P tells strips treated alike in one block apart; LEVEL is compared with,
    a level called None or control unless given. Prints terms, means, differences and what can't be told as JSON.
stonetone edition in.json
    What an edition needs: sheets with spoilage, tearing down, damp growth, ink, minutes, rack places: {size, paper?,
    inkedCm2?, rackPlaces?, past?}. What isn't known is null.

stonetone suspects in.json
    Names suspects behind a fault with what speaks for and against each, and the separating tests that settle most a
    minute: {features, log?, outcomes?} or {comparisons: [folder or record, …], log?, outcomes?}. Never a verdict.

stonetone room air --air-changes 6 --removal 0.99
stonetone room settle --micron 5 --density 1.07 --metres 2
stonetone room vapour --json in.json
stonetone room lift --json in.json
    Minutes until air clears, until dust has fallen (density in g/cm³), the peak of a washout's vapour, and the weight
    limit of a lift: value, range, source, and what comes before it. Local codes decide, never these figures.

stonetone export --data DIR --to FOLDER
    Writes every kind of record as CSV and JSON into a folder that is empty or not there yet, also while the data folder
    is served. Columns and units: docs/export.md. Photographs are no part of it.

stonetone demo year --data DIR
    Writes a year of the invented Saltreach Stone Room into a folder that is empty or not there yet: works, runs, plans,
    batches, inks, pulls and an edition, to be looked at with serve. The same every time.

stonetone backup --data DIR --to FILE
    Saves the data folder into one file, also while it is served: all that was acknowledged before is in it.
    The file must not be there yet; it gets its name when it is whole.
stonetone restore FILE --data DIR
    Puts a backup back into a folder that is empty or not there yet, whole or not at all.
stonetone verify FILE
    Judges every byte of a backup. Ends with 0 whole, 2 damaged, cut off or no backup, and says which part.

stonetone help | version`;
