package limberboard.letters.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import limberboard.print.page.Block;
import limberboard.print.page.BlockWriter;
import limberboard.print.page.Inline;
import limberboard.print.text.InlineText;

/** Blocks of a page as lines of a letter, in which no picture is. */
final class BlockLines implements BlockWriter {
  private final List<DraftLine> lines = new ArrayList<>();

  private BlockLines() {}

  /** The lines. */
  static List<DraftLine> of(List<Block> blocks) {
    BlockLines all = new BlockLines();
    blocks.forEach(block -> block.to(all));
    return all.lines.stream().filter(line -> !line.text().isBlank()).toList();
  }

  private static String text(List<Inline> runs) {
    return InlineText.of(runs).replaceAll("\\s+", " ").strip();
  }

  @Override
  public void heading(Block.Heading heading) {
    lines.add(DraftLine.heading(text(heading.text())));
  }

  @Override
  public void paragraph(Block.Paragraph paragraph) {
    if (!paragraph.text().stream().allMatch(Inline.Picture.class::isInstance)) {
      lines.add(DraftLine.paragraph(text(paragraph.text())));
    }
  }

  @Override
  public void items(Block.Items items) {
    int number = items.start();
    for (List<Block> item : items.items()) {
      String said = of(item).stream().map(DraftLine::text).collect(Collectors.joining(" "));
      lines.add(
          items.numbered()
              ? DraftLine.paragraph("Step " + number + ". " + said)
              : DraftLine.item(said));
      number++;
    }
  }

  @Override
  public void quote(Block.Quote quote) {
    lines.addAll(of(quote.blocks()));
  }

  @Override
  public void verbatim(Block.Verbatim verbatim) {
    verbatim.text().lines().forEach(line -> lines.add(DraftLine.paragraph(line)));
  }

  @Override
  public void rule(Block.Rule rule) {
    // A letter has no line across.
  }

  @Override
  public void table(Block.Table table) {
    for (List<List<Inline>> row : table.rows()) {
      List<String> cells = new ArrayList<>();
      for (int i = 0; i < row.size(); i++) {
        String cell = text(row.get(i));
        String name = i == 0 || i >= table.head().size() ? "" : text(table.head().get(i)) + ": ";
        if (!cell.isEmpty()) {
          cells.add(name + cell);
        }
      }
      lines.add(DraftLine.item(String.join("; ", cells)));
    }
  }

  @Override
  public void caution(Block.CautionBox box) {
    box.question()
        .ifPresent(
            asked -> lines.add(DraftLine.paragraph(asked + " If so, or if you cannot tell:")));
    lines.add(DraftLine.heading("Caution: " + box.title()));
    lines.add(DraftLine.paragraph(box.danger()));
    box.act().forEach(say -> lines.add(DraftLine.item(say)));
    lines.add(DraftLine.paragraph(box.seek()));
  }

  @Override
  public void shortCaution(Block.ShortCaution caution) {
    lines.add(
        DraftLine.item(
            "Caution: " + caution.title() + ". " + caution.danger() + " " + caution.rule()));
  }

  @Override
  public void foldedCautions(Block.FoldedCautions folded) {
    folded.names().forEach(name -> lines.add(DraftLine.item("Caution: " + name.title())));
  }

  @Override
  public void notice(Block.Notice notice) {
    lines.add(DraftLine.paragraph(text(notice.text())));
  }

  @Override
  public void drawing(Block.Drawing drawing) {
    lines.add(DraftLine.paragraph(drawing.alt()));
  }

  @Override
  public void forks(Block.Forks forks) {
    throw new IllegalArgumentException("no letter has a whole tree in it");
  }

  @Override
  public void ticks(Block.TickList list) {
    list.ticks().forEach(tick -> lines.add(DraftLine.item(text(tick.what()))));
  }

  @Override
  public void facts(Block.Facts facts) {
    facts
        .facts()
        .forEach(fact -> lines.add(DraftLine.paragraph(fact.name() + ": " + text(fact.value()))));
  }
}
