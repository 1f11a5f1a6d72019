package limberboard.print.text;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import limberboard.print.markdown.InlineReader;
import limberboard.print.page.Block;
import limberboard.print.page.BlockWriter;

/** Writes blocks as plain text. For one page, on one thread. */
public final class BlockText implements BlockWriter {
  private final TextLines out;
  private final TableText tables;

  public BlockText(TextLines out) {
    this.out = out;
    this.tables = new TableText(out);
  }

  @Override
  public void paragraph(Block.Paragraph paragraph) {
    out.paragraph(InlineText.of(paragraph.text()));
  }

  @Override
  public void heading(Block.Heading heading) {
    out.underlined(InlineText.of(heading.text()), heading.level() == 2 ? '-' : '.');
  }

  @Override
  public void quote(Block.Quote quote) {
    out.in("  ");
    quote.blocks().forEach(block -> block.to(this));
    out.out();
    out.gap();
  }

  @Override
  public void verbatim(Block.Verbatim verbatim) {
    out.in("    ");
    verbatim.text().lines().forEach(out::wrapped);
    out.out();
    out.gap();
  }

  @Override
  public void rule(Block.Rule rule) {
    out.line("-".repeat(out.room()));
    out.gap();
  }

  @Override
  public void table(Block.Table table) {
    tables.table(table);
  }

  @Override
  public void notice(Block.Notice notice) {
    out.paragraph(InlineText.of(notice.text()));
  }

  @Override
  public void drawing(Block.Drawing drawing) {
    out.paragraph(InlineReader.notShown(drawing.alt()));
  }

  @Override
  public void ticks(Block.TickList list) {
    for (Block.Tick tick : list.ticks()) {
      out.item(tick.number().isEmpty() ? "[ ] " : "[ ] " + tick.number() + ". ");
      out.wrapped(InlineText.of(tick.what()));
      tick.facts().forEach(out::wrapped);
      tick.beside().forEach(fact -> out.wrapped(fact.name() + ": " + InlineText.of(fact.value())));
      out.out();
    }
    out.gap();
  }

  @Override
  public void forks(Block.Forks forks) {
    forks.forks().forEach(this::fork);
  }

  private void fork(Block.Fork fork) {
    out.item(fork.number() + ". ");
    String from = fork.from().map(number -> " (from " + number + ")").orElse("");
    out.wrapped(InlineText.of(fork.what()) + from);
    if (!fork.cautions().isEmpty()) {
      out.wrapped(fork.cautions());
    }
    fork.facts().forEach(out::wrapped);
    for (Block.Way way : fork.ways()) {
      out.item("- ");
      out.wrapped(way.finding() + ", " + way.chance() + ": " + way.then());
      out.out();
    }
    out.out();
    out.gap();
  }

  @Override
  public void items(Block.Items items) {
    int number = items.start();
    for (List<Block> item : items.items()) {
      out.item(items.numbered() ? number + ". " : "- ");
      number++;
      for (Block block : item) {
        if (items.tight() && block instanceof Block.Paragraph paragraph) {
          out.wrapped(InlineText.of(paragraph.text()));
        } else {
          block.to(this);
        }
      }
      out.out();
    }
    out.gap();
  }

  @Override
  public void caution(Block.CautionBox box) {
    String because = box.because().isEmpty() ? "" : " (" + box.because() + ")";
    String question = box.question().map(asked -> asked + " If so: ").orElse("");
    out.wrapped(question + "CAUTION: " + box.title() + because);
    out.in("  ");
    out.wrapped(box.danger());
    for (String act : box.act()) {
      out.item("- ");
      out.wrapped(act);
      out.out();
    }
    if (!box.seek().isEmpty()) {
      out.wrapped(box.seek());
    }
    out.out();
    out.gap();
  }

  @Override
  public void shortCaution(Block.ShortCaution caution) {
    String at = caution.at().isEmpty() ? "" : " (" + caution.at() + ")";
    out.item("- ");
    out.wrapped(
        "CAUTION: " + caution.title() + at + ". " + caution.danger() + " " + caution.rule());
    out.out();
  }

  @Override
  public void foldedCautions(Block.FoldedCautions folded) {
    if (!folded.names().isEmpty()) {
      out.item("- ");
      out.wrapped(
          (folded.names().size() == 1 ? "CAUTION: " : "CAUTIONS: ")
              + folded.names().stream()
                  .map(name -> name.title() + " (read)")
                  .collect(Collectors.joining("; ")));
      out.out();
    }
  }

  @Override
  public void facts(Block.Facts facts) {
    int widest =
        facts.facts().stream().mapToInt(fact -> TextLines.length(fact.name())).max().orElse(0);
    for (Block.Fact fact : facts.facts()) {
      String name = String.format(Locale.ROOT, "%-" + (widest + 2) + "s", fact.name() + ":");
      out.item(name);
      out.wrapped(InlineText.of(fact.value()));
      out.out();
    }
    out.gap();
  }
}
