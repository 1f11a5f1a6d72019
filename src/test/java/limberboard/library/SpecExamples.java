package limberboard.library;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Heading;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.text.TextContentRenderer;

/**
 * Reads a specification: a Markdown file in which fenced blocks make examples. An example ends with
 * its {@code expect} block; blocks of a section without one belong to all examples.
 */
public final class SpecExamples {
  private SpecExamples() {}

  /** A fenced block: its first word, the rest of the fence line, and the text. */
  public record Block(String word, String rest, String text) {}

  /** An example, named after its section and number. */
  public record Example(String name, List<Block> blocks) {
    /** The text of the first block that begins with this word. */
    public Optional<String> text(String word) {
      return blocks.stream().filter(b -> b.word().equals(word)).map(Block::text).findFirst();
    }
  }

  /** A specification: the blocks for all examples, and the examples. */
  public record Spec(List<Block> common, List<Example> examples) {}

  /** Reads a specification from the test resources. */
  public static Spec read(String resource) {
    try (InputStream in = SpecExamples.class.getResourceAsStream(resource)) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      Collector collector = new Collector();
      Parser.builder().build().parse(text).accept(collector);
      return new Spec(collector.common, collector.examples);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static final class Collector extends AbstractVisitor {
    private final List<Block> common = new ArrayList<>();
    private final List<Example> examples = new ArrayList<>();
    private List<Block> blocks = new ArrayList<>();
    private String section = "";
    private int number;

    @Override
    public void visit(Heading heading) {
      common.addAll(blocks);
      blocks = new ArrayList<>();
      section = TextContentRenderer.builder().build().render(heading);
      number = 0;
    }

    @Override
    public void visit(FencedCodeBlock block) {
      String[] info = block.getInfo().split(" ", 2);
      blocks.add(new Block(info[0], info.length > 1 ? info[1] : "", block.getLiteral()));
      if (info[0].equals("expect")) {
        number++;
        examples.add(new Example(section + " " + number, List.copyOf(blocks)));
        blocks = new ArrayList<>();
      }
    }
  }
}
