package boreledger.station.report;

import boreledger.station.results.JobResults.CylinderResults;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * Makes a job's build sheet, a PDF file. The same facts give the same bytes, the time of making
 * included.
 */
public final class BuildSheet {
  private static final String LANGUAGE = "en";

  private final SheetFacts facts;

  private BuildSheet(SheetFacts facts) {
    this.facts = facts;
  }

  /** Makes the sheet in memory. */
  public static PrintedSheet of(SheetFacts facts) {
    try {
      return new BuildSheet(facts).print();
    } catch (IOException e) {
      throw new UncheckedIOException("a file made in memory", e);
    }
  }

  private PrintedSheet print() throws IOException {
    try (PDDocument document = new PDDocument()) {
      Face face = Face.in(document);
      try (Pages pages = new Pages(document, face, facts.paper())) {
        fill(pages, new Typesetter(face, facts.paper().width() - 2 * Paper.MARGIN));
      }
      new Feet(facts, face).draw(document);
      describe(document);
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      document.save(bytes);
      int cautions = new SheetCautions(facts.results(), facts.lengths()).all().size();
      return new PrintedSheet(bytes.toByteArray(), document.getNumberOfPages(), cautions);
    }
  }

  private void fill(Pages pages, Typesetter type) throws IOException {
    pages.add(new HeadSection(facts, type).pieces());
    pages.add(new GlanceSection(facts, type).pieces());
    pages.addTogether(new AdviceSection(facts.results().advice(), facts.lengths(), type).pieces());
    ChoiceSection choices = new ChoiceSection(facts.lengths(), type);
    for (List<Piece> part : choices.parts(facts.results().ringChoices())) {
      pages.addTogether(part);
    }
    for (CylinderResults cylinder : facts.results().cylinders()) {
      for (List<Piece> part : new CylinderSection(facts, type).parts(cylinder)) {
        pages.addTogether(part);
      }
    }
    pages.addTogether(new GaugeSection(facts.lengths(), type).pieces(facts.results().gauges()));
    pages.add(new BasisSection(facts, type).pieces());
    pages.add(new CautionSection(facts, type).pieces());
  }

  private void describe(PDDocument document) {
    PDDocumentInformation about = document.getDocumentInformation();
    about.setTitle("Build sheet: " + facts.job().name());
    about.setSubject("Bores and ring gaps; ledger head " + facts.results().ledgerHead());
    about.setCreator("boreledger " + facts.program());
    if (facts.by() != null) {
      about.setAuthor(facts.by());
    }
    Calendar made = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
    made.setTimeInMillis(facts.made().toEpochMilli());
    about.setCreationDate(made);
    document.getDocumentCatalog().setLanguage(LANGUAGE);
    PDViewerPreferences viewer = new PDViewerPreferences(new COSDictionary());
    viewer.setDisplayDocTitle(true);
    document.getDocumentCatalog().setViewerPreferences(viewer);
    // Otherwise the file's identifier would be made from the clock.
    document.setDocumentId(facts.made().getEpochSecond());
  }
}
