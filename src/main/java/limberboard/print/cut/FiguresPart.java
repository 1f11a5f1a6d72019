package limberboard.print.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.library.page.PageFigure;
import limberboard.print.page.Block;
import limberboard.print.page.Block.Side;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;
import limberboard.words.Sentences;

/** The figures of a page: what each is and when it holds, its value, and where it comes from. */
final class FiguresPart {
  private final CutContext cutting;

  FiguresPart(CutContext cutting) {
    this.cutting = cutting;
  }

  /** The part; empty where the page has none that can be read. */
  Optional<Part> part(Map<String, PageFigure> figures) {
    List<List<List<Inline>>> rows = new ArrayList<>();
    figures.forEach(
        (name, figure) -> {
          if (figure.value().isPresent()) {
            rows.add(row(name, figure));
          }
        });
    Block table =
        new Block.Table(
            List.of(Side.LEFT, Side.LEFT, Side.LEFT),
            List.of(Inline.text("Figure"), Inline.text("Value"), Inline.text("Source")),
            rows);
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(new Part(Part.Role.FIGURES, "Figures", List.of(table)));
  }

  private List<List<Inline>> row(String name, PageFigure figure) {
    String title = figure.title().isBlank() ? Sentences.spoken(name) : figure.title();
    String value =
        figure
            .value()
            .map(said -> said.written() + cutting.quantities().beside(said))
            .orElseThrow();
    return List.of(
        Inline.text(figure.at().isBlank() ? title : title + ", " + figure.at()),
        List.of(new Inline.Strong(Inline.text(value))),
        Inline.text(figure.source()));
  }
}
