package boreledger.station.bench.jobform;

import boreledger.station.bench.look.Styles;
import boreledger.station.job.draft.Place;
import boreledger.station.job.draft.Section;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;

/** All sections below each other, scrolled so that the field with the focus is seen. */
final class FormPage extends ScrollPane {
  private static final double AIR = 0.15;

  private final VBox content = new VBox();
  private final List<SectionPane> sections = new ArrayList<>();

  FormPage(FormModel model, Choices choices) {
    setId("form-page");
    setFitToWidth(true);
    setHbarPolicy(ScrollBarPolicy.NEVER);
    setFocusTraversable(false);
    content.getStyleClass().add(Styles.FORM_PAGE);
    Groups.ORDER.forEach(section -> sections.add(new SectionPane(model, choices, section)));
    content.getChildren().addAll(sections);
    setContent(content);
  }

  void refresh() {
    sections.forEach(SectionPane::refresh);
  }

  /** Puts the focus into a field. */
  void begin(Place place) {
    cells().stream()
        .filter(cell -> cell.place().equals(place))
        .findFirst()
        .ifPresent(FormPage::begin);
  }

  /** Puts the focus into the first field of a section, or onto its button. */
  void begin(Section section) {
    SectionPane pane = sections.get(Groups.ORDER.indexOf(section));
    reveal(pane, 0);
    pane.cells().stream()
        .filter(FormPage::isSeen)
        .findFirst()
        .ifPresentOrElse(FormPage::begin, () -> pane.firstButton().requestFocus());
  }

  /** The first field that can be seen. */
  void begin() {
    begin(Groups.ORDER.get(0));
  }

  /**
   * Puts the focus into the field behind the one that a node belongs to.
   *
   * @return whether there is one
   */
  boolean beginAfter(Node node) {
    List<FieldCell> seen = cells().stream().filter(FormPage::isSeen).toList();
    for (int i = 0; i < seen.size() - 1; i++) {
      if (isIn(node, seen.get(i))) {
        begin(seen.get(i + 1));
        return true;
      }
    }
    return false;
  }

  /** The field that a node belongs to; null when it belongs to none. */
  FieldCell cellOf(Node node) {
    return cells().stream().filter(cell -> isIn(node, cell)).findFirst().orElse(null);
  }

  /** Scrolls as little as needed for a node of the page to be seen; others are left alone. */
  void reveal(Node node) {
    if (isIn(node, content)) {
      FieldCell cell = cellOf(node);
      reveal(cell == null ? node : cell, AIR);
    }
  }

  private void reveal(Node node, double air) {
    applyCss();
    layout();
    Bounds seen = getViewportBounds();
    Bounds whole = content.getLayoutBounds();
    Bounds wanted = content.sceneToLocal(node.localToScene(node.getLayoutBounds()));
    double room = whole.getHeight() - seen.getHeight();
    if (room <= 0) {
      return;
    }
    double top = getVvalue() * room;
    double margin = air * seen.getHeight();
    if (air == 0 || wanted.getMinY() - margin < top) {
      setVvalue(Math.max(0, wanted.getMinY() - margin) / room);
    } else if (wanted.getMaxY() + margin > top + seen.getHeight()) {
      setVvalue(Math.min(room, wanted.getMaxY() + margin - seen.getHeight()) / room);
    }
  }

  private List<FieldCell> cells() {
    return sections.stream().flatMap(section -> section.cells().stream()).toList();
  }

  private static void begin(FieldCell cell) {
    cell.input().stops().get(0).requestFocus();
  }

  private static boolean isSeen(Node node) {
    for (Node up = node; up != null; up = up.getParent()) {
      if (!up.isVisible()) {
        return false;
      }
    }
    return true;
  }

  private static boolean isIn(Node node, Node outer) {
    for (Node up = node; up != null; up = up.getParent()) {
      if (up == outer) {
        return true;
      }
    }
    return false;
  }
}
