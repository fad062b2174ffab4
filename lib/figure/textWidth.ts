// Advance widths in thousandths of an em, read off National Park Variable 5.3.0 at weights 400 and 600.
const characters =
  " !\"#$%&'()*+,-./0123456789:;<=>?@ABCDEFGHIJKLMNOPQRSTUVWXYZ[\\]^_`abcdefghijklmnopqrstuvwxyz{|}~°±×−½¼¾–…’·";
const regular =
  "275 232 314 635 576 809 665 166 372 372 453 555 256 421 232 401 629 469 549 575 614 571 607 513 597 604 232 289 581 578 581 462 920 590 599 604 624 547 504 627 655 242 489 593 500 823 657 678 570 672 620 576 536 658 573 827 590 538 556 323 394 323 446 508 243 530 569 504 568 530 293 570 556 221 230 505 221 876 560 552 567 567 356 475 359 559 496 699 484 488 466 367 199 367 603 353 569 515 556 842 856 918 588 636 287 262"
    .split(" ")
    .map(Number);
const bold =
  "275 264 364 648 582 824 694 197 400 400 464 567 280 426 264 422 655 503 580 586 635 582 612 544 608 615 264 317 584 581 584 487 952 612 629 622 656 570 531 664 690 279 514 618 529 851 683 710 591 730 646 582 572 687 600 829 605 556 578 344 420 344 452 546 261 560 596 521 595 552 359 600 588 256 269 538 256 905 590 574 594 594 389 494 405 590 512 747 504 533 489 394 235 394 633 353 579 525 559 928 950 991 591 730 307 294"
    .split(" ")
    .map(Number);

const tabularDigit = 660;
const unknownCharacter = 700;
const place = new Map([...characters].map((character, index) => [character, index]));
place.set("\u00a0", 0).set("\u202f", 0);

/**
 * Width in px that a text takes in National Park, a little generous: digits count as wide as the widest, and
 * a character that is not in the table as wide as a capital. Any text; `size` in px; `weight` 400 to 600.
 * Source: advance widths of the font file.
 * @example textWidth("minutes", 14) // 50.1
 */
export function textWidth(text: string, size: number, weight = 400): number {
  const widths = weight >= 550 ? bold : regular;
  let sum = 0;
  for (const character of text) {
    const isDigit = character >= "0" && character <= "9";
    sum += isDigit ? tabularDigit : (widths[place.get(character) ?? -1] ?? unknownCharacter);
  }
  return (sum * size) / 1000;
}
