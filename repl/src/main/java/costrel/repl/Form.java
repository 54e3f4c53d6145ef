package costrel.repl;

import costrel.report.CsvForm;
import costrel.report.HtmlForm;
import costrel.report.JsonForm;
import costrel.report.Sheet;
import costrel.report.TextForm;

/** The forms in which an answer is given. */
enum Form {
    /** For people at a terminal. */
    TEXT,
    /** For spreadsheets. */
    CSV,
    /** For programs. */
    JSON,
    /** For a browser and a printer. */
    HTML;

    String of(Sheet sheet) {
        return switch (this) {
            case TEXT -> TextForm.of(sheet);
            case CSV -> Rendering.clean(CsvForm.of(sheet)).replace("\n", "\r\n");
            case JSON -> Rendering.clean(JsonForm.of(sheet));
            case HTML -> HtmlForm.of(sheet);
        };
    }
}
