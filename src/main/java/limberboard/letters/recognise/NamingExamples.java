package limberboard.letters.recognise;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import limberboard.boat.Boat;
import limberboard.letters.mail.Letter;
import limberboard.letters.mail.Mailbox;
import limberboard.letters.mail.Passage;

/**
 * How people name the boat that they write of, and boats in passing: by the lists of lines that
 * come with the program, and by recorded letters. Safe for use by several threads.
 */
final class NamingExamples {
  private static final String LIST = "naming.txt";
  private static final String PAIRS = "naming-pairs.txt";

  private final TextParser parser;
  private final NamingKeys keys;
  private final Map<RecordedLetter, List<Naming>> known = new ConcurrentHashMap<>();
  private final List<Naming> lines;
  private final List<Naming> unpaired;
  private final Map<String, String> nameOfBoat = new HashMap<>();

  /**
   * A boat that is named.
   *
   * @param keys what stands around her name
   * @param words the words of the whole letter
   * @param own whether the letter is about her
   */
  record Naming(Set<String> keys, Set<String> words, boolean own) {}

  /** The boats that a letter names. */
  private static List<Naming> namings(NamingKeys keys, NamingKeys.Read letter, String own) {
    Names found = names(keys, letter);
    Set<String> words = KeyNumbers.littleRoom(found.words());
    return found.names().entrySet().stream()
        .map(
            each ->
                new Naming(
                    KeyNumbers.littleRoom(each.getValue()), words, each.getKey().equals(own)))
        .toList();
  }

  /**
   * What a letter says of the boats that it names.
   *
   * @param names what stands around each name
   * @param words the words of the whole letter
   */
  record Names(Map<String, Set<String>> names, Set<String> words) {}

  /**
   * Reads the lists.
   *
   * @param boats the workspace's boats, which recorded letters name
   */
  NamingExamples(TextParser parser, List<Boat> boats) {
    this.parser = parser;
    boats.forEach(boat -> nameOfBoat.put(boat.id(), boat.name().toLowerCase(Locale.ROOT)));
    NameFinder finder = new NameFinder(Set.copyOf(nameOfBoat.values()));
    keys = new NamingKeys(finder, new BoatNames(finder, parser));
    NameFinder marks = new NameFinder(Set.copyOf(MarkedLine.NAMES.values()));
    NamingKeys ofLine = new NamingKeys(marks, new BoatNames(marks, parser));
    String own = MarkedLine.NAMES.get("own").toLowerCase(Locale.ROOT);
    Function<List<String>, List<Naming>> named =
        all ->
            all.parallelStream()
                .flatMap(line -> namings(ofLine, read(MarkedLine.of(line)), own).stream())
                .toList();
    unpaired =
        named.apply(
            Stream.concat(WordList.lines(LIST).stream(), WholeLetters.lines().stream()).toList());
    lines = Stream.concat(unpaired.stream(), named.apply(WordList.lines(PAIRS)).stream()).toList();
  }

  private NamingKeys.Read read(MarkedLine line) {
    LetterText nothing = parser.read("", "");
    return new NamingKeys.Read(parser.read(line.subject(), line.text()), nothing, nothing);
  }

  /** The lines of the lists. */
  List<Naming> lines() {
    return lines;
  }

  /**
   * Those of the lists' lines that stand for themselves, and not in pairs with most words alike.
   */
  List<Naming> unpaired() {
    return unpaired;
  }

  /** The boats that a recorded letter names. */
  List<Naming> of(RecordedLetter letter) {
    return known.computeIfAbsent(letter, this::namings);
  }

  private List<Naming> namings(RecordedLetter letter) {
    String own = letter.expected().boat().map(id -> nameOfBoat.getOrDefault(id, "")).orElse("");
    return namings(keys, read(letter.letter(), parser.recorded(letter)), own);
  }

  /** What stands around the names in a letter. */
  Names of(Letter letter, LetterText text) {
    return names(keys, read(letter, text));
  }

  private static Names names(NamingKeys keys, NamingKeys.Read letter) {
    Map<String, Set<String>> names = keys.of(letter);
    return new Names(names, names.isEmpty() ? Set.of() : keys.words(letter));
  }

  /** What stands around the names in the mail that a letter quotes. */
  Names ofQuoted(Letter letter) {
    String earlier = letter.of(Passage.Kind.QUOTED) + "\n\n" + letter.of(Passage.Kind.FORWARDED);
    LetterText nothing = parser.read("", "");
    return names(
        keys,
        new NamingKeys.Read(
            parser.read("", earlier.replaceAll("(?m)^[>\\s]+", "")), nothing, nothing));
  }

  private NamingKeys.Read read(Letter letter, LetterText text) {
    return new NamingKeys.Read(
        text,
        parser.read("", letter.of(Passage.Kind.SIGNATURE)),
        parser.read("", letter.head().from().map(Mailbox::name).orElse("")));
  }

  /** How a name is written in a letter: as it is, or otherwise. */
  Optional<String> written(LetterText text, String name) {
    Matcher exact =
        Pattern.compile("\\b" + Pattern.quote(name), Pattern.CASE_INSENSITIVE).matcher(text.text());
    if (exact.find()) {
      return Optional.empty();
    }
    NameFinder finder = new NameFinder(Set.of(name));
    for (int i = 0; i < text.words().size(); i++) {
      Optional<NameFinder.Found> found = finder.at(text, i);
      if (found.isPresent()) {
        return Optional.of(text.written(i, i + found.get().words()));
      }
    }
    return Optional.empty();
  }
}
