/** Sheets and charts as files: HTML from the library's report package, pictures and PDF from libraries that draw. */
@NullMarked
package costrel.repl.sheets;

import org.jspecify.annotations.NullMarked;
