package limberboard.library.header;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.deser.DeserializationProblemHandler;
import com.fasterxml.jackson.databind.deser.ValueInstantiator;
import java.io.IOException;
import java.util.Collection;
import java.util.Map;
import limberboard.library.problem.Report;

/** Reports each value that does not fit its key, and goes on as if it were absent. */
final class ValueProblems extends DeserializationProblemHandler {
  private static final String WRITE = "; write ";

  private final Report report;

  ValueProblems(Report report) {
    this.report = report;
  }

  @Override
  public Object handleWeirdStringValue(
      DeserializationContext context, Class<?> type, String value, String message) {
    boolean plain = isNumber(type) || type == boolean.class || type == Boolean.class;
    String said =
        plain ? "\"" + value + "\" is not " + expected(type) + WRITE + expected(type) : message;
    int write = said.indexOf(WRITE);
    report.error(
        pointer(context.getParser()),
        write < 0 ? said : said.substring(0, write),
        write < 0 ? "" : said.substring(write + "; ".length()));
    return null;
  }

  @Override
  public Object handleUnexpectedToken(
      DeserializationContext context,
      JavaType type,
      JsonToken token,
      JsonParser parser,
      String message)
      throws IOException {
    report.error(
        pointer(parser), "is " + found(token) + " here", "write " + expected(type.getRawClass()));
    parser.skipChildren();
    return null;
  }

  @Override
  public Object handleMissingInstantiator(
      DeserializationContext context,
      Class<?> type,
      ValueInstantiator instantiator,
      JsonParser parser,
      String message)
      throws IOException {
    report.error(
        pointer(parser), "is " + found(parser.currentToken()) + " here", "write " + expected(type));
    parser.skipChildren();
    return null;
  }

  static String pointer(JsonParser parser) {
    return parser == null ? "" : parser.getParsingContext().pathAsPointer().toString();
  }

  static String pointer(JsonProcessingException e) {
    StringBuilder pointer = new StringBuilder();
    if (e instanceof JsonMappingException mapping) {
      for (JsonMappingException.Reference step : mapping.getPath()) {
        pointer.append('/');
        pointer.append(step.getFieldName() == null ? step.getIndex() : step.getFieldName());
      }
    }
    return pointer.toString();
  }

  @Override
  public Object handleInstantiationProblem(
      DeserializationContext context, Class<?> type, Object argument, Throwable cause) {
    Throwable root = cause;
    while (root.getCause() != null) {
      root = root.getCause();
    }
    String said = String.valueOf(root.getMessage());
    int write = said.indexOf(WRITE);
    report.error(
        pointer(context.getParser()),
        write < 0 ? said : said.substring(0, write),
        write < 0 ? "" : said.substring(write + "; ".length()));
    return null;
  }

  private static String found(JsonToken token) {
    if (token == JsonToken.START_OBJECT) {
      return "a mapping";
    }
    return token == JsonToken.START_ARRAY ? "a list" : "a single value";
  }

  private static boolean isNumber(Class<?> type) {
    boolean whole = Number.class.isAssignableFrom(type) && type != Double.class;
    return whole || type.isPrimitive() && type != boolean.class;
  }

  private static String expected(Class<?> type) {
    if (type == int.class || type == Integer.class) {
      return "a whole number";
    }
    if (isNumber(type)) {
      return "a number";
    }
    if (type == boolean.class || type == Boolean.class) {
      return "true or false";
    }
    if (type == String.class) {
      return "a text";
    }
    if (Collection.class.isAssignableFrom(type)) {
      return "a list";
    }
    if (Map.class.isAssignableFrom(type) || type.isRecord()) {
      return "a mapping of \"key: value\"";
    }
    return "a value as docs/file-formats.md describes it";
  }
}
