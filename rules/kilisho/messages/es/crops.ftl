# of 637a42a5, reviewed: false
crops-maize-name = Maíz
# of e09e8813, reviewed: false
crops-maize-handling-1 = La mitad antes de la siembra o al sembrar, en el surco y cubierta; la mitad cuando las plantas llegan a la rodilla, junto a las hileras.
# of d6653e9b, reviewed: false
crops-sorghum_millet-name = Sorgo y mijo
# of 1b9bc7b7, reviewed: false
crops-rice-name = Arroz
# of d8b1cc53, reviewed: false
crops-rice-handling-1 = Incorpórelo en suelo drenado antes del trasplante; en agua estancada buena parte del amonio se pierde en el aire.
# of 29fd9a2f, reviewed: false
crops-wheat-name = Trigo y cebada
# of ef2a3220, reviewed: false
crops-beans-name = Frijol, caupí y otras leguminosas de grano
# of a0be691f, reviewed: false
crops-beans-handling-1 = Como máximo un poco antes de la siembra; dé el digestato a los cultivos que necesitan nitrógeno.
# of 6d61374d, reviewed: false
crops-potato-name = Papa
# of 8f2576bd, reviewed: false
crops-potato-handling-1 = Antes de la siembra, cubierto con tierra; nada una vez que se forman los tubérculos.
# of 54185dae, reviewed: false
crops-sweet_potato-name = Camote (batata)
# of 6137697f, reviewed: false
crops-sweet_potato-handling-1 = Solo antes de la siembra; el nitrógeno tardío produce guías.
# of b5cc7692, reviewed: false
crops-cassava-name = Yuca (mandioca)
# of ba76ee85, reviewed: false
crops-leafy_vegetables-name = Hortalizas de hoja (repollo, col rizada, amaranto, ensaladas)
# of d0d85409, reviewed: false
crops-leafy_vegetables-handling-1 = En el suelo antes de la siembra, nunca sobre hojas que se van a comer.
# of f2eb1050, reviewed: false
crops-tomato_pepper-name = Tomate, pimiento y otras hortalizas de fruto
# of 8decb371, reviewed: false
crops-tomato_pepper-handling-1 = En el suelo antes de la siembra; en las plantas con tutor el fruto no lo toca.
# of 9bb08573, reviewed: false
crops-root_vegetables-name = Zanahoria, cebolla, remolacha y rábano
# of 8f7cd46d, reviewed: false
crops-root_vegetables-handling-1 = Mejor al cultivo anterior que a ellas mismas.
# of 75464029, reviewed: false
crops-banana-name = Banano y plátano
# of 67e270ae, reviewed: false
crops-banana-description = Se toma como comida cruda; indique eaten_raw false donde todo se cocina.
# of a785afa5, reviewed: false
crops-banana-handling-1 = En un anillo cavado alrededor de la cepa y cubierto.
# of 0bc1f210, reviewed: false
crops-fruit_trees-name = Árboles frutales (mango, aguacate, cítricos, papaya)
# of 3e8ebe7e, reviewed: false
crops-fruit_trees-handling-1 = Después de la cosecha, en un anillo bajo el borde de la copa y cubierto; la fruta que cayó sobre el suelo abonado no es para comer cruda.
# of b0e1f06c, reviewed: false
crops-coffee-name = Café
# of 9705c298, reviewed: false
crops-coffee-handling-1 = En una zanja a lo largo de la línea de goteo, en dos o tres partes durante las lluvias.
# of 017979e8, reviewed: false
crops-tea-name = Té
# of aa224535, reviewed: false
crops-tea-handling-1 = Después de recoger las hojas, entre las hileras y cubierto.
# of ad32d6a3, reviewed: false
crops-sugarcane-name = Caña de azúcar
# of 341c5389, reviewed: false
crops-napier_grass-name = Pasto elefante (napier)
# of d5e0cabc, reviewed: false
crops-napier_grass-handling-1 = Después de cada corte, a lo largo de las hileras; el siguiente corte viene después del tiempo de espera.
# of a0b4d70c, reviewed: false
crops-pasture-name = Pastura y pasto de corte
# of 5e6425a9, reviewed: false
crops-pasture-handling-1 = Sobre pasto corto después de un corte o un pastoreo; mantenga fuera a los animales hasta que termine el tiempo de espera.
