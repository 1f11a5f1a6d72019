package limberboard.library.header;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.deser.std.StdScalarDeserializer;
import java.io.IOException;
import java.time.DateTimeException;
import java.util.function.Function;

/** Reads a value from its text by a function that throws with a message for the writer. */
final class TextDeserializer<T> extends StdScalarDeserializer<T> {
  private static final long serialVersionUID = 1L;

  private final transient Function<String, ? extends T> parse;

  TextDeserializer(Class<?> type, Function<String, ? extends T> parse) {
    super(type);
    this.parse = parse;
  }

  @Override
  @SuppressWarnings("unchecked")
  public T deserialize(JsonParser parser, DeserializationContext context) throws IOException {
    if (parser.currentToken() != JsonToken.VALUE_STRING) {
      return (T) context.handleUnexpectedToken(handledType(), parser);
    }
    String text = parser.getText();
    try {
      return parse.apply(text);
    } catch (DateTimeException | IllegalArgumentException e) {
      return (T) context.handleWeirdStringValue(handledType(), text, "%s", e.getMessage());
    }
  }
}
