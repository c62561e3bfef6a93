package org.scalepan.ask;

import org.scalepan.factors.Product;
import org.scalepan.words.DisplayName;

/** A product in the form in which it is compared, such as mealworm meal. */
public record ProductForm(Product product, String form) {

    /** As written in a question: the form is named only when it is not the product's usual one. */
    public String written() {
        return form.equals(product.defaultForm()) ? product.id() : product.id() + ":" + form;
    }

    /** As said in a sentence. */
    public DisplayName name() {
        String key = "product." + product.id();
        return form.equals(product.defaultForm())
                ? DisplayName.of(key, product.name())
                : new DisplayName(key, product.name() + " (" + form.replace('-', ' ') + ")", "form." + form);
    }

    /** As said in an English sentence. */
    public String words() {
        return name().english();
    }
}
