const page = document.querySelector("#page");
if (page) page.textContent = "Steady Boil";
