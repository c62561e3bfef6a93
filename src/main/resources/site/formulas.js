// Updates the formulas of the page with its own address, for the question in its form or in the fragment of its
// address: /examples#product=beef&indicator=land
"use strict";
(() => {
  const form = document.getElementById("question");

  const asked = () => Object.fromEntries(
    [...new FormData(form)].map(([name, value]) => [name, encodeURIComponent(value.trim()).replaceAll("%3A", ":")]));

  const formulas = (question, separator) => {
    const { product, indicator, per, against } = question;
    const value = `${location.origin}/v1/value/${indicator}/${product}?per=${per}`;
    const ratio = `${location.origin}/v1/ratio/${indicator}/${product}/${against}?per=${per}`;
    const table = `${location.origin}/v1/table?products=${product},${against}&indicators=${indicator}&per=${per}`;
    const number = (text) => `=NUMBERVALUE(${text}${separator}"."${separator}",")`;
    const web = (url) => `WEBSERVICE("${url}")`;
    const text = (stat) => `=${web(`${value}&stat=${stat}&on_error=200`)}`;
    return {
      number: number(web(`${value}&stat=median`)),
      low: number(web(`${value}&stat=low`)),
      high: number(web(`${value}&stat=high`)),
      ratio: number(web(`${ratio}&stat=median`)),
      field: number(`FILTERXML(${web(`${table}&format=xml`)}${separator}"//row[1]/median")`),
      words: text("text"),
      unit: text("unit"),
      sources: text("sources"),
      references: text("references"),
      import: `=IMPORTDATA("${table}")`,
      importComma: `=IMPORTDATA("${table}&delim=tab&decimal=,")`,
      importNumber: `=IMPORTDATA("${value}&stat=median")`,
      importXml: `=IMPORTXML("${table}&format=xml"${separator}"//row[1]/sources")`,
    };
  };

  const write = () => {
    const question = asked();
    for (const code of document.querySelectorAll("[data-cell]")) {
      const separator = code.closest("[data-separator]").dataset.separator;
      code.textContent = formulas(question, separator)[code.dataset.cell];
    }
  };

  const offer = async (address, list) => {
    const answer = await fetch(address);
    const options = (await answer.json()).items.map(({ id, name }) => Object.assign(document.createElement("option"),
      { value: id, label: name }));
    document.getElementById(list).replaceChildren(...options);
  };

  const read = () => {
    for (const [name, value] of new URLSearchParams(location.hash.slice(1))) {
      if (form.elements.namedItem(name)) {
        form.elements.namedItem(name).value = value;
      }
    }
    write();
  };

  addEventListener("hashchange", read);
  form.addEventListener("input", write);
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    write();
  });
  read();
  // Only suggestions: the page works without them.
  offer("/v1/products", "products").catch(() => {});
  offer("/v1/indicators", "indicators").catch(() => {});
  offer("/v1/units", "units").catch(() => {});
})();
