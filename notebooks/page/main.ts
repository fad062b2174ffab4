import "./style/colour.css";
import "./style/type.css";
import "./style/page.css";
import "./style/front.css";
import "./style/ledger.css";
import "./style/log.css";
import "./style/grid.css";
import "./style/book.css";
import "./style/inHand.css";
import "./style/hold.css";
import "./style/print.css";
import demo from "../../data/demoShop.json";
import { readRecord } from "../../lib/record/index.ts";
import { withAside } from "../aside/withAside.ts";
import { apart } from "../figures/balanceOf.ts";
import { figures } from "../figures/index.ts";
import { folds } from "../folds.ts";
import { strip, tank } from "../frontDrawings.ts";
import oneRun from "../oneRun.ts";
import front from "../shop.ts";
import { suspects } from "../suspects.ts";
import { tools } from "../tools.ts";
import { vocabulary } from "../vocabulary.ts";
import { startApp } from "./app.ts";
import { openShop } from "./keep.ts";

const root = document.querySelector<HTMLElement>("#page");
if (!root) throw new Error("missing #page; the page's own HTML has it");

// Read like any other record: what is wrong with it shows at once.
const invented = readRecord(JSON.stringify(demo));
const shop = await openShop("record" in invented ? { demo: invented.record } : {});

startApp({
  root,
  shop,
  vocabulary: withAside(vocabulary),
  figures,
  pages: {
    book: oneRun,
    front,
    tools,
    ownQuestions: "My question",
    strip,
    tank,
    apart,
    suspects,
    folds: (notebook, run, system) => folds(notebook, run.log, system),
  },
});
