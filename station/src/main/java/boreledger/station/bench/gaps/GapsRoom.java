package boreledger.station.bench.gaps;

import boreledger.station.bench.findings.FindingsView;
import boreledger.station.bench.look.CylinderChoice;
import boreledger.station.bench.look.FigureView;
import boreledger.station.bench.look.Room;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.GapsText;
import boreledger.station.bench.words.StartText;
import boreledger.station.bench.words.WindowText;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** Ring gaps: measured against expected along the bore, and what to do about them. */
public final class GapsRoom {
  /** By which it is gone to. */
  public static final String ID = "gaps";

  private static final double[] WIDTHS_PERCENT = {40, 32, 28};
  private static final double[] HEIGHT_PERCENT = {100};

  private final GapsModel model;
  private final FigureView figure = new FigureView("gap-figure", 1);
  private final Label title = Words.label("gaps-title", Styles.ROOM_TITLE);
  private final Parent view;

  private GapsRoom(GapsModel model) {
    this.model = model;
    view =
        new FindingsView(
            ID,
            List.of(title, choosing()),
            page(),
            model.findings(),
            model.page().isNotNull(),
            GapsText.NOTHING.with(),
            GapsText.DEFERS.with());
    model.page().subscribe(this::show);
  }

  /** The room of a model. */
  public static Room of(GapsModel model) {
    return new Room(
        ID, WindowText.ROOM_GAPS.with(), new GapsRoom(model).view, model.findings()::want);
  }

  private Node choosing() {
    ComboBox<String> ring = new ComboBox<>(model.rings());
    ring.setId("gaps-ring");
    ring.setAccessibleText(StartText.RING.with());
    ring.valueProperty().bindBidirectional(model.ring());
    CylinderChoice cylinders = new CylinderChoice(model.cylinder());
    model
        .page()
        .subscribe(
            page -> {
              if (page != null) {
                cylinders.show(page.verdicts());
              }
            });
    HBox.setHgrow(cylinders, Priority.ALWAYS);
    HBox row = new HBox(ring, cylinders);
    row.getStyleClass().add(Styles.LINE);
    row.visibleProperty().bind(model.page().isNotNull());
    return row;
  }

  private GridPane page() {
    GridPane page = FindingsView.page(WIDTHS_PERCENT, HEIGHT_PERCENT);
    page.add(figure, 0, 0);
    page.add(new FactsPane(model), 1, 0);
    page.add(new FilePane(model), 2, 0);
    return page;
  }

  private void show(GapsPage page) {
    if (page == null) {
      title.setText(WindowText.ROOM_GAPS.with());
      return;
    }
    title.setText(
        GapsText.TITLE.with(page.shown().title(), model.ring().get(), page.shown().words()));
    figure.show(page.figure(), GapsText.FIGURE_SPOKEN.with(title.getText()));
  }
}
