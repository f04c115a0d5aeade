package endfloat.http;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.Handler;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpStatus;
import io.javalin.http.SameSite;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.List;
import java.util.Map;

/**
 * Stands before every request, file and upgrade: the right host, the right origin, and a browser
 * that was let in by the link that {@code endfloat} prints.
 */
final class Guard implements Handler {
  /** The parameter of the opening link. */
  static final String TOKEN = "token";

  private static final String LET_IN = "endfloat.let-in";

  private final Hosts hosts;
  private final String token;

  Guard(Hosts hosts, String token) {
    this.hosts = hosts;
    this.token = token;
  }

  /** The port is part of the name because cookies ignore ports. */
  static String cookieName(int port) {
    return "endfloat-" + port;
  }

  @Override
  public void handle(Context ctx) {
    int port = ctx.req().getLocalPort();
    SecurityHeaders.addTo(ctx);
    if (!hosts.allowsHost(ctx.host(), port)) {
      throw new RequestRefusedException(
          403,
          "This server does not answer to the host name of the request.",
          "Open the link that endfloat printed, or allow the name with --allow-host.");
    }
    if (!hosts.allowsOrigin(ctx.header("Origin"), port) || isForeignPage(ctx)) {
      throw new RequestRefusedException(
          403,
          "The request comes from a page of another origin.",
          "Work from the page that this server served.");
    }
    if (isSame(ctx.cookie(cookieName(port)))) {
      ctx.attribute(LET_IN, true);
      return;
    }
    if (isOpenToAll(ctx.path())) {
      return;
    }
    if (ctx.method().equals(HandlerType.GET) && isSame(ctx.queryParam(TOKEN))) {
      letIn(ctx, port);
      return;
    }
    throw new RequestRefusedException(
        401,
        "This browser has not been let in yet.",
        "Open the link that endfloat printed when it started; it holds the key.");
  }

  /** Whether the browser of a request was let in. */
  static boolean hasLetIn(Context ctx) {
    return Boolean.TRUE.equals(ctx.attribute(LET_IN));
  }

  /** Browsers say where a request started; links from elsewhere may open a page, nothing more. */
  private static boolean isForeignPage(Context ctx) {
    String site = ctx.header("Sec-Fetch-Site");
    return ("cross-site".equals(site) || "same-site".equals(site))
        && !"navigate".equals(ctx.header("Sec-Fetch-Mode"));
  }

  private static boolean isOpenToAll(String path) {
    return path.equals(PageFiles.FAVICON);
  }

  private boolean isSame(String given) {
    return given != null
        && MessageDigest.isEqual(
            given.getBytes(StandardCharsets.UTF_8), token.getBytes(StandardCharsets.UTF_8));
  }

  private void letIn(Context ctx, int port) {
    Cookie cookie = new Cookie(cookieName(port), token);
    cookie.setHttpOnly(true);
    cookie.setSameSite(SameSite.STRICT);
    cookie.setPath("/");
    ctx.cookie(cookie);
    // The key leaves the address line at once, and with it the history's next entry.
    // One slash in front, or the rest would be read as a host.
    String path = "/" + ctx.path().replaceFirst("^[/\\\\]+", "");
    ctx.redirect(path + queryWithoutToken(ctx.queryParamMap()), HttpStatus.SEE_OTHER);
    ctx.skipRemainingHandlers();
  }

  private static String queryWithoutToken(Map<String, List<String>> parameters) {
    StringBuilder query = new StringBuilder();
    parameters.forEach(
        (name, values) -> {
          for (String value : values) {
            if (!name.equals(TOKEN)) {
              query.append(query.length() == 0 ? '?' : '&').append(encoded(name));
              query.append('=').append(encoded(value));
            }
          }
        });
    return query.toString();
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}
