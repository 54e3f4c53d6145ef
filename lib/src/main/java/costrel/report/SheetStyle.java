package costrel.report;

/** How printed sheets look: dark on white, rules and not colours, an A4 page. Only what print and screen both know. */
final class SheetStyle {

    private SheetStyle() {}

    /** For any sheet. */
    static final String COMMON = """
            @page { size: A4; margin: 9mm; }
            html { background: #ffffff; }
            body { color: #000000; background: #ffffff; margin: 0 auto; width: 192mm;
              font-family: "Liberation Sans", Arial, Helvetica, sans-serif; font-size: 8.3pt; line-height: 1.18; }
            h1 { font-size: 17pt; line-height: 1.1; margin: 0; }
            h2 { font-size: 10pt; margin: 2.6mm 0 0.8mm 0; border-bottom: 0.4mm solid #000000; }
            p { margin: 0 0 1mm 0; }
            table { border-collapse: collapse; width: 99.5%; margin: 0 0 1.2mm 0; }
            caption { text-align: left; font-weight: bold; font-size: 10pt; padding: 2mm 0 0.6mm 0; }
            th, td { text-align: left; vertical-align: top; padding: 0.45mm 1mm; border: 0.2mm solid #777777; }
            thead th { background: #e6e6e6; font-size: 7.6pt; vertical-align: bottom; }
            tbody th { font-weight: normal; }
            tr { page-break-inside: avoid; }
            .n { text-align: right; white-space: nowrap; }
            thead .n { white-space: normal; }
            .total td, .total th { font-weight: bold; border-top: 0.5mm solid #000000; }
            .box { background: #ffffff; border: 0.4mm solid #000000; min-width: 14mm; width: 17mm; }
            .kind { font-weight: bold; }
            ul { margin: 0; padding-left: 4mm; }
            li { margin: 0 0 0.4mm 0; }
            figure { margin: 2mm 0; page-break-inside: avoid; }
            figure svg, figure img { width: 150mm; height: auto; }
            figcaption { font-size: 8pt; font-style: italic; }
            @media screen { body { padding: 6mm; } }
            @media print { body { width: auto; } }
            """;

    /** For the brew sheet: two columns where there is room, all of it on one page. */
    static final String BREW_SHEET = COMMON + """
            .left { float: left; width: 57%; }
            .right { float: right; width: 41%; }
            .row { clear: both; }
            .end { clear: both; height: 0; }
            caption { padding: 1.2mm 0 0.4mm 0; }
            .facts th, .facts td { border: 0; padding: 0.6mm 1mm; }
            .facts td { white-space: nowrap; }
            .facts th { font-size: 7.6pt; }
            tbody td { padding-top: 0.55mm; padding-bottom: 0.55mm; }
            .facts .box { border: 0.4mm solid #000000; }
            .event td { background: #e6e6e6; font-weight: bold; }
            .care { font-size: 7pt; line-height: 1.12; }
            .care h2 { font-size: 9pt; margin-top: 1mm; }
            """;
}
