package limberboard.letters.recognise;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import limberboard.library.Library;
import limberboard.library.page.Model;
import limberboard.library.page.Page;

/** Finds models in a letter, with the year beside them: "our 26 from 2012", "a 2018 30". */
final class SaidModels {
  private static final int NEAR = 40;
  private static final Map<Integer, String> TENS =
      Map.of(2, "twenty", 3, "thirty", 4, "forty", 5, "fifty");
  private static final List<String> ONES =
      List.of("one", "two", "three", "four", "five", "six", "seven", "eight", "nine");
  private static final Pattern OWN =
      Pattern.compile(
          "\\b(?i:ours|mine|our boat|my boat|she|the boat)(?:'s| is| was)"
              + "(?: called| named)?(?: the)?(?: \\d\\d,)? (?<name>\\p{Lu}\\p{Ll}{2,})\\b");
  private static final Pattern YEAR = Pattern.compile("\\b(19[89]\\d|20[0-4]\\d)\\b");
  private static final Pattern BUILT_PLACE = Pattern.compile("[.!?]\\s");

  private final Map<Pattern, Page<Model>> names = new LinkedHashMap<>();
  private final Pattern another;

  /**
   * A model that stands in a letter.
   *
   * @param model its id
   * @param written how it is written
   * @param year the year beside it
   */
  record Mention(String model, String written, OptionalInt year) {}

  SaidModels(Library library) {
    List<String> sizes = new ArrayList<>();
    for (Page<Model> model : library.all(Model.class)) {
      number(model.title()).ifPresent(sizes::add);
      List<String> full = new ArrayList<>();
      full.add(model.title());
      full.add(model.id().replace('-', ' '));
      full.addAll(model.head().saidAs());
      for (String name : full) {
        names.put(spelt(name), model);
      }
      number(model.title())
          .ifPresent(
              size -> {
                names.put(bare(size), model);
                names.put(alone(size), model);
                names.put(inWords(Integer.parseInt(size)), model);
              });
    }
    another = another(sizes);
  }

  /** A name that stands beside a model's size, or behind "called" and the like. */
  private static Pattern another(List<String> sizes) {
    String size = "(?:" + (sizes.isEmpty() ? "(?!)" : String.join("|", sizes)) + ")\\b";
    return Pattern.compile(
        "\\b(?:called|named|name is|with name|name of|by the name of|christened|her name)"
            + "\\s+(?:her\\s+)?[“\"'(]?\\p{Lu}\\p{Ll}+"
            + "|\\b\\p{Lu}\\p{Ll}{3,},? (?:is|the|a|an|my|our) (?:\\p{L}+ )?(?:\\d{4} )?"
            + "(?:T|\\p{Lu}\\p{Ll}+ )?"
            + size
            + "|\\p{Lu}\\p{Ll}{3,} \\([^)]*"
            + size
            + "|\\b"
            + size
            + "\\s*\\(\\p{Lu}\\p{Ll}{3,}|\\b[Mm]ine(?:'s| is) \\p{Lu}\\p{Ll}+"
            + "|\\b(?!(?:The|Our|My|Your|This|That|One|Tarnwick)\\b)\\p{Lu}\\p{Ll}{2,},\\s+(?:Tarnwick\\s+|T)?"
            + size);
  }

  private static Optional<String> number(String title) {
    Matcher digits = Pattern.compile("(\\d{2,3})\\s*$").matcher(title);
    return digits.find() ? Optional.of(digits.group(1)) : Optional.empty();
  }

  /** The size as an item of its own: "Godwit 26.", "34, hull 52.", "34-footer". */
  private static Pattern alone(String size) {
    return Pattern.compile(
        "(?:(?<=[.!?:;(]\\s{0,3}|\\n\\s{0,3}|\\A|(?<![.\\d]\\s)\\p{Lu}\\p{Ll}{2,12},?\\s)"
            + size
            + "(?=\\s*(?:[.!)\\n"
            + ";]|$|/\\s?\\d{1,3}\\b|,\\s*(?:\\n"
            + "|hull|no\\b|built|\\d{4}|\\p{Lu}))))|(?<![\\d./])"
            + size
            + "(?=[\\s-]?(?:footer|foot\\b|feet\\b|ft\\b))");
  }

  /** The size in words: "our thirty", "one of your twenty-sixes", "thirty-four foot". */
  private static Pattern inWords(int size) {
    String tens = TENS.getOrDefault(size / 10, "(?!)");
    String words = size % 10 == 0 ? tens : tens + "[\\s-]?" + ONES.get(size % 10 - 1);
    String plural = size % 10 == 0 ? tens.substring(0, tens.length() - 1) + "ies" : words + "e?s";
    return Pattern.compile(
        "(?i:\\b(?:the|my|our|your|a|an|his|her|uncle's|of)\\s+(?:\\p{L}+\\s+)?"
            + words
            + "(?=\\s*(?:[.,;:!?)\\n"
            + "]|$|(?:goes|has|is|was|of|no|hull|with|from|built|foot|footer)\\b)))|(?i:\\b(?:"
            + plural
            + "|"
            + words
            + "s)\\b)|(?i:\\b"
            + words
            + "[\\s-](?:foot|feet|footer|footers|ft|no|hull)\\b)"
            + "|(?i:(?<=[.!?,]\\s|\\n|\\bno\\.?\\s\\d{1,3}\\s)"
            + words
            + "(?=\\s*(?:[.,!]|$|\\n)))");
  }

  private static Pattern spelt(String name) {
    String words = Pattern.quote(name.strip()).replace(" ", "\\E[\\s-]*\\Q");
    return Pattern.compile(
        "(?<![\\p{L}\\d])" + words + "(?![\\p{L}\\d])", Pattern.CASE_INSENSITIVE);
  }

  /** The size alone: "the 26", "my 34", "T30", "2018 30", "(26, hull 90)". */
  private static Pattern bare(String size) {
    return Pattern.compile(
        "(?<![\\p{L}\\d])(?:(?:the|my|our|a|an|one|your|little|old|new|used|same|of|these)\\s+|t\\s?-?|(?:19|20)\\d\\d\\s+|\\()"
            + size
            + "(?![\\p{L}\\d%]|\\s*[./:]?\\d|\\s*(?:minutes?|min|mins|hours?|days?|weeks?|months?|years?|litres?|l|mm|cm|m|metres?|miles?|knots?|per|odd|degrees?|seconds?|times|volts?|amps?|pounds?|euros?|kg|guests?|people|january|february|march|april|may|june|july|august|september|october|november|december)\\b)",
        Pattern.CASE_INSENSITIVE);
  }

  /** The models that a text names. */
  List<Mention> in(String text) {
    List<Mention> found = new ArrayList<>();
    for (Map.Entry<Pattern, Page<Model>> name : names.entrySet()) {
      Matcher matcher = name.getKey().matcher(text);
      while (matcher.find()) {
        found.add(
            new Mention(
                name.getValue().id(),
                matcher.group().strip(),
                yearBeside(text, matcher.start(), matcher.end())));
      }
    }
    return found;
  }

  private static OptionalInt yearBeside(String text, int from, int to) {
    String before = text.substring(Math.max(0, from - 12), to);
    String behind = text.substring(to, Math.min(text.length(), to + NEAR));
    Matcher end = BUILT_PLACE.matcher(behind);
    String same = end.find() ? behind.substring(0, end.start()) : behind;
    for (String part : List.of(before, same)) {
      Matcher year = YEAR.matcher(part);
      if (year.find()) {
        return OptionalInt.of(Integer.parseInt(year.group()));
      }
    }
    return OptionalInt.empty();
  }

  /**
   * Whether a boat's own name stands beside the model: "called Jacksnipe", "Avocet, the 2014 …".
   */
  boolean namesAnother(String text) {
    return another.matcher(text).find();
  }

  /** Whether a letter says outright that its own boat is another than those of some names. */
  boolean ownAnother(String text, Set<String> names) {
    Matcher own = OWN.matcher(text);
    boolean another = false;
    while (own.find()) {
      another = another || !names.contains(own.group("name").toLowerCase(Locale.ROOT));
    }
    return another;
  }

  /** The model of mentions that agree. */
  Optional<Recognised> found(List<Mention> mentions) {
    return mentions.stream()
        .findFirst()
        .map(said -> new Recognised(said.model(), "named: “" + said.written() + "”"));
  }

  OptionalInt year(List<Mention> mentions) {
    return mentions.stream()
        .map(Mention::year)
        .filter(OptionalInt::isPresent)
        .findFirst()
        .orElse(OptionalInt.empty());
  }
}
