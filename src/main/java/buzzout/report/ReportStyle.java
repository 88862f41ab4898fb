package buzzout.report;

/** How a report looks on a phone, a desktop and paper; what is wrong differs in more than its colour. */
final class ReportStyle {
    static final String CSS = """

            :root { --ink: #1b1b1b; --soft: #565656; --line: #b8b8b8; --paper: #fff; --tint: #f4f3f0;
              --good: #17683a; --wrong: #a3241a; --wash: #fdeeea; color-scheme: light dark; }
            @media screen and (prefers-color-scheme: dark) {
              :root { --ink: #ececec; --soft: #b3b3b3; --line: #5f5f5f; --paper: #181818; --tint: #242424;
                --good: #79cf9c; --wrong: #ff9d8f; --wash: #3a211d; } }
            * { box-sizing: border-box; }
            body { margin: 0; background: var(--paper); color: var(--ink);
              font: 1rem/1.5 system-ui, "Segoe UI", "Noto Sans", "DejaVu Sans", sans-serif; overflow-wrap: break-word; }
            main { max-width: 54rem; margin: 0 auto; padding: 1rem; }
            h1 { font-size: 1.6rem; line-height: 1.2; margin: 0; }
            h2 { font-size: 1.2rem; margin: 2.2rem 0 .6rem; padding-bottom: .2rem; border-bottom: 1px solid var(--line); }
            h3 { font-size: 1.05rem; margin: 0 0 .4rem; }
            p, ul, ol { margin: .4rem 0; }
            ul, ol { padding-left: 1.4rem; }
            .when, .small { color: var(--soft); }
            .small { font-size: .9rem; }
            .verdict { margin: 1rem 0; padding: .7rem 1rem; border: 1px solid var(--good); border-left-width: .5rem;
              background: var(--tint); font-size: 1.1rem; }
            .verdict.wrong { border-color: var(--wrong); background: var(--wash); }
            .verdict .mark { font-weight: 700; margin-right: .3rem; }
            figure { margin: 1rem 0; }
            figcaption { color: var(--soft); font-size: .9rem; }
            svg { display: block; width: 100%; height: auto; }
            svg text { font-family: system-ui, "Segoe UI", "Noto Sans", "DejaVu Sans", sans-serif; fill: var(--ink); }
            svg .cap { fill: var(--paper); stroke: var(--line); stroke-width: 1.5; }
            svg .untested { stroke: var(--soft); stroke-dasharray: 5 4; }
            svg .wrong { fill: var(--wash); stroke: var(--wrong); stroke-width: 3.5; }
            svg .nets { font-size: 9.5px; fill: var(--soft); }
            svg .sign { font-size: 23px; font-weight: 700; text-anchor: end; fill: var(--good); }
            svg .sign.waits { fill: var(--soft); }
            svg .sign.bad { fill: var(--wrong); }
            svg .tag { fill: var(--ink); stroke: var(--paper); stroke-width: 2; }
            svg .number { font-size: 15px; font-weight: 700; text-anchor: middle; fill: var(--paper); }
            table { border-collapse: collapse; width: 100%; margin: .6rem 0; }
            th, td { text-align: left; vertical-align: top; padding: .25rem .7rem .25rem 0;
              border-bottom: 1px solid var(--line); }
            td:last-child { overflow-wrap: anywhere; }
            thead th { color: var(--soft); font-weight: 600; font-size: .9rem; }
            td.mark { width: 3rem; font-weight: 700; text-align: center; }
            .finding { margin: 1rem 0; padding: .7rem 1rem; border: 1px solid var(--line); border-left: .35rem solid
              var(--ink); }
            .finding dl, #how dl { margin: .4rem 0; }
            dt { font-weight: 600; }
            dd { margin: 0 0 .4rem; }
            .finding .number { display: inline-block; min-width: 1.6rem; padding: 0 .3rem; margin-right: .4rem;
              border-radius: .8rem; background: var(--ink); color: var(--paper); text-align: center; }
            @media (min-width: 40rem) {
              .finding dl, #how dl { display: grid; grid-template-columns: 9rem 1fr; gap: .2rem .8rem; }
              dd { margin: 0; } }
            @media (max-width: 39.99rem) { svg .nets { display: none; } th, td { padding-right: .4rem; } }
            @media print {
              @page { margin: 15mm; }
              body { font-size: 10.5pt; } main { max-width: none; padding: 0; }
              h2, h3 { break-after: avoid; } .finding, figure, tr, .verdict { break-inside: avoid; }
              svg .nets { display: inline; }
              .verdict, svg, .finding .number { print-color-adjust: exact; -webkit-print-color-adjust: exact; } }
            """;

    private ReportStyle() {}
}
