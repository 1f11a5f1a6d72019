package limberboard.writing.form;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import limberboard.library.header.HeaderSource;
import limberboard.library.header.YamlText.Unchangeable;
import limberboard.library.page.Kind;
import limberboard.writing.PageText;
import limberboard.writing.PageText.Stretch;

/**
 * A page's header as a form. Setting a field replaces the letters of that field alone: comments,
 * keys that nobody knows, order, quotes and line ends elsewhere stay. A field that is set back to
 * what it said at first gets its first letters back. Immutable.
 */
public final class HeaderForm {
  private final Kind kind;
  private final PageText origin;
  private final PageText page;

  private HeaderForm(Kind kind, PageText origin, PageText page) {
    this.kind = kind;
    this.origin = origin;
    this.page = page;
  }

  /** The form of a page; empty when it has no header that can be read as keys and values. */
  public static Optional<HeaderForm> of(Kind kind, PageText page) {
    HeaderForm form = new HeaderForm(kind, page, page);
    return page.header().isPresent() && form.source().isReadable()
        ? Optional.of(form)
        : Optional.empty();
  }

  /** The page as the form has it now. */
  public PageText page() {
    return page;
  }

  /**
   * The form after the page was edited as text; empty when its header can no longer be read. What
   * the form goes back to stays.
   */
  public Optional<HeaderForm> edited(PageText text) {
    return of(kind, text).map(read -> new HeaderForm(kind, origin, text));
  }

  private HeaderSource source() {
    return source(page);
  }

  private static HeaderSource source(PageText page) {
    return new HeaderSource(page.header().orElseThrow().of(page.text()));
  }

  /** All fields that such a page can have, in the order in which they are best written. */
  public List<FormField> fields() {
    return fields(source());
  }

  private List<FormField> fields(HeaderSource source) {
    int from = page.header().orElseThrow().from();
    return FieldDeclaration.of(kind).stream()
        .map(
            declared ->
                new FormField(
                    declared,
                    source.value(declared.key()).map(value -> value(declared, value)),
                    source
                        .place(declared.key())
                        .map(at -> new Stretch(from + at.from(), from + at.to()))))
        .toList();
  }

  private static FieldValue value(FieldDeclaration declared, HeaderSource.Value value) {
    if (value instanceof HeaderSource.Nested nested) {
      return new FieldValue.Nested(nested.yaml());
    }
    if (value instanceof HeaderSource.Many many) {
      return new FieldValue.Many(many.entries());
    }
    String text = ((HeaderSource.One) value).text();
    return declared.kind() == FieldKind.LIST && !text.isEmpty()
        ? new FieldValue.Many(List.of(text))
        : new FieldValue.Text(text);
  }

  /** What a field says; empty when its key is not there. */
  public Optional<FieldValue> value(String key) {
    return value(source(), key);
  }

  private Optional<FieldValue> value(HeaderSource source, String key) {
    return source.value(key).map(value -> value(declared(key), value));
  }

  private FieldDeclaration declared(String key) {
    return FieldDeclaration.of(kind).stream()
        .filter(declared -> declared.key().equals(key))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("a " + kind.word() + " has no key " + key));
  }

  /** The keys of the header that such a page cannot have; they stay as they are. */
  public List<String> unknown() {
    List<String> known = FieldDeclaration.of(kind).stream().map(FieldDeclaration::key).toList();
    return source().keys().stream().filter(key -> !known.contains(key)).toList();
  }

  /**
   * The form with a field that says something else.
   *
   * @param key one of the fields' keys
   * @param value what it is to say
   * @throws Unchangeable when it cannot be put in without touching anything else, such as YAML that
   *     is none; the message says why
   */
  public HeaderForm set(String key, FieldValue value) throws Unchangeable {
    HeaderSource source = source();
    if (value(source, key).equals(Optional.of(value))) {
      return this;
    }
    HeaderSource first = source(origin);
    Optional<String> letters =
        value(first, key).equals(Optional.of(value)) ? first.written(key) : Optional.empty();
    if (letters.isPresent() && source.value(key).isPresent()) {
      try {
        return checked(source, source.withLetters(key, letters.get()), key, Optional.of(value));
      } catch (Unchangeable e) {
        // its first letters go with another layout; it is written anew
      }
    }
    return checked(source, source.with(key, written(value), before(key)), key, Optional.of(value));
  }

  /**
   * The form without a field.
   *
   * @throws Unchangeable when it cannot be taken out without touching anything else
   */
  public HeaderForm clear(String key) throws Unchangeable {
    HeaderSource source = source();
    return checked(source, source.without(key), key, Optional.empty());
  }

  private static HeaderSource.Value written(FieldValue value) {
    if (value instanceof FieldValue.Many many) {
      return new HeaderSource.Many(many.entries());
    }
    return value instanceof FieldValue.Nested nested
        ? new HeaderSource.Nested(nested.yaml())
        : new HeaderSource.One(((FieldValue.Text) value).text());
  }

  /** The keys that stand before one where all are there. */
  private List<String> before(String key) {
    List<String> keys = FieldDeclaration.of(kind).stream().map(FieldDeclaration::key).toList();
    return keys.subList(0, keys.indexOf(declared(key).key()));
  }

  /** Makes sure that this field says what it is to say, and that all others say what they said. */
  private HeaderForm checked(
      HeaderSource source, HeaderSource made, String key, Optional<FieldValue> value)
      throws Unchangeable {
    if (!made.isReadable()) {
      throw new Unchangeable("the header could not be read any more");
    }
    Map<String, HeaderSource.Value> values = made.values();
    Map<String, HeaderSource.Value> wanted = new TreeMap<>(source.values());
    Map<String, HeaderSource.Value> got = new TreeMap<>(values);
    wanted.remove(key);
    got.remove(key);
    PageText text = page.withHeader(made.text());
    boolean parted = text.header().filter(at -> at.of(text.text()).equals(made.text())).isPresent();
    if (!parted
        || !wanted.equals(got)
        || !value(made, key).map(HeaderForm::norm).equals(value.map(HeaderForm::norm))) {
      throw new Unchangeable("it cannot be written there without changing something else");
    }
    boolean asAtFirst =
        values.equals(source(origin).values()) && page.withHeader("").equals(origin.withHeader(""));
    return new HeaderForm(kind, origin, asAtFirst ? origin : text);
  }

  /** YAML that is indented otherwise says the same. */
  private static FieldValue norm(FieldValue value) {
    return value instanceof FieldValue.Nested nested
        ? new FieldValue.Nested(nested.yaml().replaceAll("\\s+", " ").strip())
        : value;
  }
}
