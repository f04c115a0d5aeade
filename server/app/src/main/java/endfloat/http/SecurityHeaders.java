package endfloat.http;

import io.javalin.http.Context;
import java.security.SecureRandom;
import java.util.Base64;

/** The headers of every answer: nothing loads that this server did not serve, nothing frames it. */
final class SecurityHeaders {
  private static final SecureRandom RANDOM = new SecureRandom();
  private static final String NONCE = "endfloat.nonce";

  private SecurityHeaders() {}

  /** What is not a page runs and loads nothing at all. */
  static void addTo(Context ctx) {
    ctx.header("Content-Security-Policy", "default-src 'none'; frame-ancestors 'none'");
    ctx.header("X-Content-Type-Options", "nosniff");
    ctx.header("X-Frame-Options", "DENY");
    ctx.header("Referrer-Policy", "no-referrer");
    ctx.header("Cross-Origin-Opener-Policy", "same-origin");
    ctx.header("Cross-Origin-Resource-Policy", "same-origin");
    ctx.header(
        "Permissions-Policy", "camera=(), microphone=(), geolocation=(), payment=(), usb=()");
    ctx.header("Cache-Control", "no-store");
  }

  /** Replaces the policy by the one of a page, and gives the nonce that lets its own parts in. */
  static String allowPage(Context ctx) {
    String nonce = ctx.attribute(NONCE);
    if (nonce != null) {
      return nonce;
    }
    byte[] bytes = new byte[18];
    RANDOM.nextBytes(bytes);
    nonce = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    ctx.attribute(NONCE, nonce);
    ctx.header(
        "Content-Security-Policy",
        "default-src 'none'; script-src 'self' 'nonce-"
            + nonce
            + "'; style-src 'self' 'nonce-"
            + nonce
            + "'; img-src 'self' data:; font-src 'self'; connect-src 'self';"
            + " frame-ancestors 'none'; base-uri 'none'; form-action 'self'");
    return nonce;
  }
}
