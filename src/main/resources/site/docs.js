// Draws the description that this very service serves; nothing is fetched from elsewhere.
SwaggerUIBundle({
  url: "/openapi.yaml",
  dom_id: "#reader",
  deepLinking: true,
  validatorUrl: null,
  defaultModelsExpandDepth: 0,
});
