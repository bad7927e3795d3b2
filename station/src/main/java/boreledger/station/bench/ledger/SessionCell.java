package boreledger.station.bench.ledger;

import boreledger.station.app.SessionLine;
import boreledger.station.bench.look.Styles;
import java.util.function.Function;
import javafx.scene.control.ListCell;
import javafx.scene.layout.VBox;

/** A session in a list. */
final class SessionCell extends ListCell<SessionLine> {
  private final SessionWords words;
  private final Function<SessionLine, String> mark;

  /**
   * A cell.
   *
   * @param mark what stands before a session's title; empty for nothing
   */
  SessionCell(SessionWords words, Function<SessionLine, String> mark) {
    this.words = words;
    this.mark = mark;
    getStyleClass().add(Styles.LEDGER_ROW);
    setPrefWidth(0);
  }

  @Override
  protected void updateItem(SessionLine session, boolean empty) {
    super.updateItem(session, empty);
    setText(null);
    if (empty || session == null) {
      setGraphic(null);
      setAccessibleText(null);
      return;
    }
    String marked = mark.apply(session);
    String title = marked.isEmpty() ? words.title(session) : marked + " " + words.title(session);
    setGraphic(
        new VBox(
            Wrapped.words(this, title, 0, Styles.LEDGER_WORDS, Styles.LEDGER_STRONG),
            Wrapped.words(this, words.when(session), 0, Styles.LEDGER_WORDS),
            Wrapped.words(this, words.with(session), 0, Styles.LEDGER_WORDS)));
    setAccessibleText(String.join(", ", title, words.when(session), words.with(session)));
  }
}
