import { expect, test } from "vitest";
import { kindsOfPage, openPage, settle, takeComplaints } from "./harness.ts";

for (const kind of kindsOfPage) {
  test(`${kind}: opens without a complaint`, async () => {
    const page = await openPage(kind);
    await settle(page);
    expect(await page.title()).toContain("Steady Boil");
    expect(await page.locator("h1").count()).toBe(1);
  });

  test(`${kind}: its policy refuses a script that somebody put into the page`, async () => {
    const page = await openPage(kind);
    await settle(page);
    const refused = await page.evaluate(
      () =>
        new Promise<string>((done) => {
          document.addEventListener("securitypolicyviolation", (event) => done(event.effectiveDirective));
          const script = document.createElement("script");
          script.textContent = "document.title = 'taken over'";
          document.body.append(script);
          setTimeout(() => done("nothing refused"), 2000);
        }),
    );
    expect(refused).toBe("script-src-elem");
    expect(await page.title()).not.toBe("taken over");
    expect(takeComplaints(page).join("\n")).toMatch(/Content Security Policy/);
  });

  test(`${kind}: its policy refuses code made from text`, async () => {
    const page = await openPage(kind);
    await settle(page);
    // A timer given text makes code from it in the page itself, where the policy holds.
    const refused = await page.evaluate(
      () =>
        new Promise<string>((done) => {
          document.addEventListener("securitypolicyviolation", (event) => done(event.blockedURI));
          const late: unknown = "document.title = 'taken over'";
          setTimeout(late as () => void, 0);
          setTimeout(() => done("nothing refused"), 2000);
        }),
    );
    expect(refused).toBe("eval");
    expect(await page.title()).not.toBe("taken over");
    takeComplaints(page);
  });

  test(`${kind}: its policy refuses a request to anybody else`, async () => {
    const page = await openPage(kind);
    await settle(page);
    const refused = await page.evaluate(
      () =>
        new Promise<string>((done) => {
          document.addEventListener("securitypolicyviolation", (event) => done(event.effectiveDirective));
          fetch("https://example.invalid/").catch(() => setTimeout(() => done("nothing refused"), 2000));
        }),
    );
    expect(refused).toBe("connect-src");
    takeComplaints(page);
  });
}

test("the policy allows no code from text and no script from anywhere else", async () => {
  for (const kind of kindsOfPage) {
    const page = await openPage(kind);
    const policy = await page.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute("content");
    const scripts = /script-src ([^;]*)/.exec(policy ?? "")?.[1];
    expect(policy).toContain("default-src 'none'");
    expect(scripts).toMatch(kind === "site" ? /^'self'$/ : /^'sha256-[A-Za-z0-9+/]{43}='$/);
  }
});
