package dryfloor.app.drawing;

/** How each style looks in SVG. Paper and ink; water the only blue, red for wet floors alone. */
final class SvgStyleSheet {

  private SvgStyleSheet() {}

  static final String TEXT =
      """
      text { font-family: "Segoe UI", "Helvetica Neue", Arial, "DejaVu Sans", sans-serif; \
      fill: #22303a; paint-order: stroke; stroke: #fcfbf7; stroke-width: 3px; \
      stroke-linejoin: round }
      polyline { fill: none }
      .paper { fill: #fcfbf7 }
      .room { fill: #ffffff; stroke: #d9d5ca; stroke-width: 1 }
      .slab { fill: url(#concrete); stroke: #8f8a7d; stroke-width: 1 }
      .stand { fill: #eeebe2; stroke: #d3cdbd; stroke-width: 1 }
      .tank-inside { fill: #ffffff }
      .water { fill: #a9cfe4 }
      .water-gained { fill: #2b78ab }
      .water-gone { fill: url(#gone); stroke: none }
      .level-before { stroke: #2b78ab; stroke-width: 1.3; stroke-dasharray: 6 4 }
      .level-after { stroke: #174f78; stroke-width: 2 }
      .wall { stroke: #22303a; stroke-width: 3; stroke-linejoin: miter }
      .basin-wall { stroke: #22303a; stroke-width: 4.5 }
      .pipe-edge { stroke: #ffffff; stroke-width: 7 }
      .pipe { stroke: #4a5a66; stroke-width: 3.2; stroke-linejoin: round }
      .pipe-dry { stroke: #9aa5ac; stroke-width: 2.4; stroke-linejoin: round }
      .pipe-behind { stroke: #6d7c87; stroke-width: 1.4; stroke-dasharray: 2 4 }
      .symbol { fill: #ffffff; stroke: #22303a; stroke-width: 1.6 }
      .symbol-filled { fill: #22303a; stroke: none }
      .break-open { fill: #ffffff; stroke: #8a4fa0; stroke-width: 2.4 }
      .failed { fill: none; stroke: #b3261e; stroke-width: 2.2; stroke-dasharray: 3 2 }
      .flow { stroke: #2b78ab; stroke-width: 3.4 }
      .flow-head { fill: #2b78ab; stroke: #ffffff; stroke-width: 0.8 }
      .spill { stroke: #b3261e; stroke-width: 2.6; stroke-dasharray: 2.5 3; stroke-linecap: round }
      .spill-head { fill: #b3261e }
      .wet { fill: url(#wet); stroke: #b3261e; stroke-width: 1.4 }
      .rule { stroke: #7d8790; stroke-width: 1 }
      .leader { stroke: #7d8790; stroke-width: 0.8 }
      .title { font-weight: 700 }
      .heading, .name { font-weight: 600 }
      .subtitle, .note, .small { fill: #65717a }
      .story-time, .flow-text { fill: #205f8a; font-weight: 600 }
      .wet-text { fill: #b3261e; font-weight: 700 }
      .caught-text { fill: #8a5d00; font-weight: 700 }
      .dry-text { fill: #23664c; font-weight: 700 }
      .unknown-text { fill: #6b3f7d; font-weight: 700 }
      """;

  static final String PATTERNS =
      """
      <defs>
      <pattern id="concrete" width="9" height="9" patternUnits="userSpaceOnUse" \
      patternTransform="rotate(45)"><rect width="9" height="9" fill="#f1eee6"/>\
      <path d="M0 0V9" stroke="#d3cdbd" stroke-width="1.4"/></pattern>
      <pattern id="gone" width="6" height="6" patternUnits="userSpaceOnUse" \
      patternTransform="rotate(45)"><rect width="6" height="6" fill="#ffffff"/>\
      <path d="M0 0V6" stroke="#7fb2d0" stroke-width="1.6"/></pattern>
      <pattern id="wet" width="8" height="8" patternUnits="userSpaceOnUse" \
      patternTransform="rotate(-45)"><rect width="8" height="8" fill="#f8ddd9"/>\
      <path d="M0 0V8" stroke="#b3261e" stroke-width="4"/></pattern>
      </defs>
      """;
}
