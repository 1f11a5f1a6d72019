package limberboard.library.header;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.BeanDescription;
import com.fasterxml.jackson.databind.DeserializationConfig;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.deser.BeanDeserializerModifier;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.Period;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import limberboard.library.page.Outline;
import limberboard.library.problem.Limits;
import limberboard.library.problem.Nearest;
import limberboard.library.problem.Problem;
import limberboard.library.problem.Report;
import limberboard.library.value.Amount;
import limberboard.library.value.FigureValue;
import limberboard.library.value.Likelihood;
import limberboard.library.value.QuantityText;
import limberboard.library.value.Range;
import limberboard.library.value.Word;

/**
 * Binds YAML mappings to records. What a file leaves out or has wrong becomes absent, and every
 * wrong value is reported with its line. Keys are the components' names in lower case with hyphens.
 */
public final class HeaderBinder {
  private final ObjectMapper mapper;

  /** A binder; it can be used again and again, by one thread at a time or by many. */
  public HeaderBinder() {
    mapper =
        JsonMapper.builder()
            .propertyNamingStrategy(PropertyNamingStrategies.KEBAB_CASE)
            .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .disable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
            .enable(DeserializationFeature.ACCEPT_SINGLE_VALUE_AS_ARRAY)
            .addModule(new Jdk8Module())
            .addModule(values())
            .build();
  }

  private static SimpleModule values() {
    SimpleModule module = new SimpleModule("limberboard");
    text(module, Likelihood.class, Likelihood::parse);
    text(module, Range.class, Range::parse);
    text(module, Outline.class, Outline::parse);
    text(module, Period.class, Limits::period);
    text(module, LocalDate.class, Limits::day);
    text(module, MonthDay.class, HeaderBinder::monthDay);
    text(module, Double.class, Limits::number);
    text(module, OptionalDouble.class, text -> OptionalDouble.of(Limits.number(text)));
    text(module, Amount.Fixed.class, text -> new Amount.Fixed(QuantityText.parse(text)));
    text(module, FigureValue.class, FigureValue::parse);
    module.addDeserializer(Amount.class, new AmountDeserializer());
    module.setDeserializerModifier(
        new BeanDeserializerModifier() {
          @Override
          public JsonDeserializer<?> modifyEnumDeserializer(
              DeserializationConfig config,
              JavaType type,
              BeanDescription description,
              JsonDeserializer<?> usual) {
            return Word.class.isAssignableFrom(type.getRawClass())
                ? new TextDeserializer<>(type.getRawClass(), text -> word(type.getRawClass(), text))
                : usual;
          }
        });
    return module;
  }

  private static <T> void text(SimpleModule module, Class<T> type, Function<String, T> parse) {
    module.addDeserializer(type, new TextDeserializer<>(type, parse));
  }

  private static MonthDay monthDay(String text) {
    try {
      return MonthDay.parse(text);
    } catch (DateTimeException e) {
      throw new IllegalArgumentException(
          "\"" + text + "\" is no day of the year; write it as --05-01", e);
    }
  }

  private static Object word(Class<?> type, String text) {
    List<String> words =
        Arrays.stream(type.getEnumConstants()).map(constant -> ((Word) constant).word()).toList();
    int index = words.indexOf(text);
    if (index < 0) {
      throw new IllegalArgumentException(
          "\""
              + text
              + "\" is not one of "
              + String.join(", ", words)
              + Nearest.to(text, words).map(near -> "; did you mean \"" + near + "\"?").orElse(""));
    }
    return type.getEnumConstants()[index];
  }

  /**
   * Binds one mapping to several records that share its keys.
   *
   * @param tree the mapping; what is wrong goes to its report
   * @param first the first record's class
   * @param second the second record's class
   * @return both records, or empty when a required value is missing or wrong
   */
  public <A extends Record, B extends Record> Optional<Both<A, B>> bind(
      YamlTree tree, Class<A> first, Class<B> second, ObjectNode firstNode) {
    HeaderShape shape = new HeaderShape(tree.report());
    shape.compare(tree.root(), List.of(second, first), "");
    Optional<A> a = value(tree.report(), firstNode, first);
    Optional<B> b = value(tree.report(), tree.root(), second);
    return shape.isComplete() && a.isPresent() && b.isPresent()
        ? Optional.of(new Both<>(a.get(), b.get()))
        : Optional.empty();
  }

  /** Two records bound from one mapping. */
  public record Both<A, B>(A first, B second) {}

  /**
   * Reads a YAML file's text into a record.
   *
   * @param file for problems, relative to the workspace
   * @param text the YAML
   * @param type the record's class
   */
  public <A extends Record> Bound<A> read(String file, String text, Class<A> type) {
    YamlTree tree = YamlTree.read(file, text, 1);
    if (tree.root().isEmpty() && !tree.report().isEmpty()) {
      return new Bound<>(Optional.empty(), tree.report().problems(), tree.report().lines());
    }
    HeaderShape shape = new HeaderShape(tree.report());
    shape.compare(tree.root(), List.of(type), "");
    Optional<A> value = value(tree.report(), tree.root(), type).filter(v -> shape.isComplete());
    return new Bound<>(value, tree.report().problems(), tree.report().lines());
  }

  /**
   * What came of reading a file.
   *
   * @param value the record, empty when something required is missing or wrong
   * @param problems what is wrong
   * @param lines JSON pointer of a key ({@code /equipment/rig}) to its line, from 1
   */
  public record Bound<A>(Optional<A> value, List<Problem> problems, Map<String, Integer> lines) {
    /** The line of a key, written {@code equipment.rig}; 1 when it is not in the file. */
    public int line(String key) {
      return lines.getOrDefault("/" + key.replace('.', '/'), 1);
    }
  }

  private <A extends Record> Optional<A> value(Report report, ObjectNode node, Class<A> type) {
    ValueProblems problems = new ValueProblems(report);
    JsonParser parser = mapper.treeAsTokens(node);
    try {
      A value = mapper.readerFor(type).withHandler(problems).readValue(parser);
      return RequiredValues.allPresent(value) ? Optional.of(value) : Optional.empty();
    } catch (JsonProcessingException e) {
      report.error(ValueProblems.pointer(e), e.getOriginalMessage(), "");
    } catch (java.io.IOException e) {
      report.error("", String.valueOf(e.getMessage()), "");
    }
    return Optional.empty();
  }
}
