package boreledger.station.bench.view;

import boreledger.station.bench.look.Sign;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.model.Beside;
import boreledger.station.bench.model.Notice;
import boreledger.station.bench.model.Shown;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** What a person should know of the line, and how further gauges are; no room while nothing is. */
final class NoticePane extends VBox {
  private final Shown shown;

  NoticePane(Shown shown) {
    this.shown = shown;
    setId("notices");
    getStyleClass().add(Styles.NOTICES);
    shown.notice().subscribe(this::show);
    shown.besides().subscribe(this::show);
    show();
  }

  private void show() {
    List<Node> lines = new ArrayList<>();
    Notice notice = shown.notice().get();
    if (notice != null) {
      lines.add(line(sign(notice.kind()), "notice", notice.words()));
    }
    int number = 0;
    for (Beside each : shown.besides().get()) {
      number++;
      Sign.Kind kind = each.troubled() ? Sign.Kind.CAUTION : Sign.Kind.RECEIVING;
      lines.add(line(kind, "beside-" + number, each.words()));
    }
    getChildren().setAll(lines);
    setVisible(!lines.isEmpty());
    setManaged(isVisible());
  }

  private static Sign.Kind sign(Notice.Kind kind) {
    return switch (kind) {
      case CAUTION -> Sign.Kind.CAUTION;
      case LINE_GONE -> Sign.Kind.REFUSED;
      case LINE_BACK -> Sign.Kind.RECEIVING;
    };
  }

  private static Node line(Sign.Kind kind, String id, String words) {
    Label label =
        Words.label(id, kind == Sign.Kind.RECEIVING ? Styles.NOTICE : Styles.NOTICE_CAUTION);
    label.setText(words);
    label.setAccessibleRole(AccessibleRole.TEXT);
    HBox line = new HBox(new Sign(kind), label);
    line.getStyleClass().add(Styles.CAUTION_LINE);
    return line;
  }
}
