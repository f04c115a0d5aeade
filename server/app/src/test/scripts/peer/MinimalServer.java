import io.javalin.Javalin;

/** The least that serves a page with the same HTTP library: what a start is measured against. */
public final class MinimalServer {
  private MinimalServer() {}

  /** Serves one page on the port that is given. */
  public static void main(String[] args) {
    Javalin.create(
            config -> {
              config.startup.showJavalinBanner = false;
              config.jetty.host = "127.0.0.1";
              config.routes.get("/", context -> context.html("<!doctype html><title>peer</title>"));
            })
        .start(Integer.parseInt(args[0]));
  }
}
