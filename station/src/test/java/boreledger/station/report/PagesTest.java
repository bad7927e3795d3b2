package boreledger.station.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;

/** Letter paper has 792 points, less two margins of 40 and a foot of 26: 686 for the pieces. */
class PagesTest {
  private final List<String> drawn = new ArrayList<>();

  @Test
  void aPieceThatKeepsTheNextGoesToTheNextPageWithIt() throws Exception {
    lay(List.of(piece("a", 600), piece("heading", 50).keepingNext(), piece("b", 50)));

    assertEquals(List.of("a at 40", "heading at 40", "b at 90"), drawn);
  }

  @Test
  void aTableThatGoesOnRepeatsItsHead() throws Exception {
    Piece head = piece("head", 20).keepingNext();
    lay(
        List.of(
            head,
            piece("one", 300).under(head),
            piece("two", 300).under(head),
            piece("three", 300).under(head)));

    assertEquals(
        List.of("head at 40", "one at 60", "two at 360", "head at 40", "three at 60"), drawn);
  }

  @Test
  void spaceIsDroppedAtTheTopOfAPage() throws Exception {
    lay(List.of(Piece.space(30), piece("a", 680), Piece.space(30), piece("b", 10)));

    assertEquals(List.of("a at 40", "b at 40"), drawn);
  }

  @Test
  void aChainLongerThanAPageIsBrokenRatherThanLost() throws Exception {
    lay(List.of(piece("a", 400).keepingNext(), piece("b", 400).keepingNext(), piece("c", 200)));

    assertEquals(List.of("a at 40", "b at 40", "c at 440"), drawn);
  }

  private void lay(List<Piece> pieces) throws Exception {
    try (PDDocument document = new PDDocument();
        Pages pages = new Pages(document, Face.in(document), Paper.LETTER)) {
      pages.add(pieces);
    }
  }

  private Piece piece(String name, double height) {
    return Piece.of(height, (pen, x, y) -> drawn.add(name + " at " + Math.round(y)));
  }
}
