namespace CoverPattern.Files.Reports;

/// <summary>The style sheet of the report: black on white, told apart by width and dashes, so that a grey print loses nothing.</summary>
internal static class ReportStyle
{
    // No sign that XML escapes may stand in it: HTML reads a style sheet as it is.
    public const string Sheet = """

        @page { size: A4; margin: 12mm; }
        * { box-sizing: border-box; }
        body { max-width: 186mm; margin: 6mm auto; padding: 0; font: 10pt/1.35 sans-serif; color: #000; background: #fff; overflow-wrap: break-word; }
        h1 { font-size: 20pt; margin: 0 0 1mm; line-height: 1.15; }
        h2 { font-size: 14pt; margin: 8mm 0 2mm; border-bottom: 0.5mm solid #000; break-after: avoid; }
        h2.page { break-before: page; }
        h3 { font-size: 11pt; margin: 4mm 0 1mm; break-after: avoid; }
        p { margin: 1mm 0; }
        .lead { font-size: 12pt; }
        .outside { font-size: 13pt; font-weight: bold; border: 0.6mm solid #000; padding: 1.5mm 3mm; margin: 3mm 0; text-align: center; }
        .caution, .warning, .unconfirmed { margin: 2mm 0; padding: 2mm 3mm; break-inside: avoid; }
        .caution { border: 1mm solid #000; font-size: 11pt; }
        .warning { border: 0.5mm solid #000; border-left-width: 3mm; }
        .unconfirmed { border: 0.5mm dashed #000; }
        .loud { font-weight: bold; text-transform: uppercase; }
        .small { font-size: 8.5pt; }
        table { border-collapse: collapse; margin: 1mm 0 2mm; font-size: 9pt; font-variant-numeric: tabular-nums; }
        table.wide { width: 100%; }
        th, td { border: 0.2mm solid #777; padding: 0.4mm 1.6mm; text-align: left; vertical-align: top; }
        th { background: #eee; font-weight: bold; }
        thead { display: table-header-group; }
        tr { break-inside: avoid; }
        table.numbers td + td, table.numbers th + th, table.places td + td + td, table.places th + th + th { text-align: right; }
        table.places td, table.places th { white-space: nowrap; }
        table.edges td:first-child, table.seams td:first-child { white-space: nowrap; }
        table.places { font-size: 8.5pt; }
        ul, ol { margin: 1mm 0; padding-left: 6mm; }
        .columns { columns: 3; column-gap: 5mm; }
        .view, .row, .strip { break-inside: avoid; margin: 2mm 0 4mm; }
        .pattern { break-inside: avoid; display: flex; gap: 3mm; border-top: 0.3mm solid #777; padding: 2mm 0; align-items: flex-start; }
        .pattern .drawing { flex: none; min-width: 88mm; }
        .pattern .facts p, .wide td:first-child { overflow-wrap: anywhere; }
        .pattern .facts { flex: 1; min-width: 0; font-size: 8.5pt; }
        .pattern h3 { margin: 0 0 1mm; }
        .pattern table { font-size: 8pt; width: 100%; }
        .pattern th, .pattern td { padding: 0.2mm 0.8mm; }
        .broad { display: block; }
        .broad .facts { columns: 2; column-gap: 5mm; }
        .broad .facts table, .broad .facts ul { break-inside: avoid; }
        .compact { columns: 2; column-gap: 6mm; }
        .compact .pattern { display: block; }
        .compact .pattern .drawing { min-width: 0; }
        .compact .pattern .facts, .compact .pattern table { font-size: 7pt; line-height: 1.2; }
        .compact .pattern { padding: 1mm 0; }
        .compact .pattern h3 { font-size: 9pt; margin: 0.5mm 2mm 0.5mm 0; display: inline; }
        .compact .pattern .cloth { display: inline; }
        .compact .pattern p, .compact .pattern ul, .compact .pattern table { margin-top: 0.4mm; margin-bottom: 0.4mm; }
        .compact .pattern li { display: inline-block; margin-right: 3mm; }
        .compact .pattern ul { padding-left: 0; }
        .dense { columns: 2; column-gap: 4mm; }
        .dense table, .dense table.places { font-size: 7pt; line-height: 1.15; margin-top: 0; }
        .dense .wide td:first-child, .dense td + td { white-space: nowrap; }
        .dense .wide td:last-child { white-space: normal; }
        .dense th, .dense td { padding: 0.15mm 0.7mm; }
        footer { margin-top: 8mm; border-top: 0.3mm solid #000; font-size: 8.5pt; }
        svg.figure { display: block; max-width: 100%; height: auto; }
        svg.figure text { font-family: sans-serif; fill: #000; stroke: #fff; stroke-width: 0.3; paint-order: stroke; }
        svg.figure polygon, svg.figure polyline { fill: none; stroke: #000; stroke-width: 0.2; stroke-linejoin: round; }
        svg.figure .face { fill: #fff; stroke-width: 0.22; }
        svg.figure .part { fill: #fff; stroke: #888; stroke-width: 0.15; stroke-dasharray: 1.2 0.8; }
        svg.figure .seam { stroke-width: 0.4; }
        svg.figure .rim { stroke-width: 0.4; }
        svg.figure .slit { stroke-width: 0.5; stroke-dasharray: 1 0.4; }
        svg.figure .zip { stroke-width: 0.8; stroke-dasharray: 0.3 0.3; }
        svg.figure .mark { stroke-width: 0.18; stroke-dasharray: 2 0.6 0.4 0.6; }
        svg.figure .hem { stroke-width: 0.25; }
        svg.figure .skirt { fill: #ddd; stroke-width: 0.3; }
        svg.figure .leader { stroke-width: 0.12; stroke: #555; }
        svg.figure .cut { stroke-width: 0.5; }
        svg.figure .inner-cut { stroke-width: 0.5; }
        svg.figure .sew { stroke-width: 0.22; stroke-dasharray: 1.6 0.7; }
        svg.figure .fold { stroke-width: 0.3; stroke-dasharray: 3 0.8 0.4 0.8; }
        svg.figure .grain { stroke-width: 0.15; stroke: #333; }
        svg.figure .head, svg.figure .dot { fill: #000; stroke: none; }
        svg.figure .notch { stroke-width: 0.6; }
        svg.figure .drawn-mark { stroke-width: 0.2; }
        svg.figure .roll { stroke-width: 0.4; stroke: #555; }
        svg.figure .flaw { stroke-width: 0.3; stroke-dasharray: 1 0.6; stroke: #c00000; }
        svg.figure .usable { stroke-width: 0.15; stroke-dasharray: 2 1; stroke: #555; }
        svg.figure .scale, svg.figure .bar { stroke-width: 0.2; }
        svg.figure .break { stroke-width: 0.25; stroke-dasharray: 4 1 1 1; }
        svg.figure .name, svg.figure .side, svg.figure .facet, svg.figure .opening, svg.figure .piece, svg.figure .front { font-weight: bold; }
        svg.figure .corner { font-style: italic; }
        @media screen and (max-width: 190mm) { body { margin: 3mm; } .pattern { display: block; } .columns { columns: 1; } }

        """;
}
