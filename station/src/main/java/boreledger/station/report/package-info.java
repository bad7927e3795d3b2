/**
 * The build sheet: a job's results, the figures they rest on and their cautions as a PDF file.
 *
 * <p>Sections make {@link boreledger.station.report.Piece pieces}, pieces go onto pages from top to
 * bottom, and every page is drawn with the same {@link boreledger.station.drawing.Pen} that the
 * figures use. Words stand in the file in the order they are read.
 */
package boreledger.station.report;
