// Renders the description served by this service; nothing is fetched from elsewhere.
SwaggerUIBundle({
  url: "/openapi.yaml",
  dom_id: "#reader",
  deepLinking: true,
  validatorUrl: null,
  defaultModelsExpandDepth: 0,
});
